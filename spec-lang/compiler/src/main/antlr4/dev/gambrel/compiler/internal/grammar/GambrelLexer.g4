/*
 * The words of the language. Every character of a text belongs to some token, so reading words never fails;
 * what does not belong is a token of its own kind and is reported by the parser's adapter.
 */
lexer grammar GambrelLexer;

options {
    caseInsensitive = true;
}

// Statements
LANGUAGE: 'language';
USE: 'use';
SOURCE: 'source';
SPECIFICATION: 'specification';
CARCASS: 'carcass' | 'carcase';
FROM: 'from';
STREAM: 'stream';
CUT: 'cut';
BONE: 'bone';
MUSCLE: 'muscle';
GLAND: 'gland';
TRIM: 'trim';
REMOVE: 'remove';
SQUARE: 'square';
LOSS: 'loss';
REST: 'rest';
PORTION: 'portion';
SEPARATE: 'separate';
REFERENCE: 'reference';
NOTE: 'note';
CONTAINS: 'contains';
SPECIES: 'species';
RIBS: 'ribs';
VERTEBRAE: 'vertebrae';
PIECE: 'piece';
PUBLISHED: 'published';

// Words within statements
ALONG: 'along';
ALSO: 'also';
AND: 'and';
ANY: 'any';
AT: 'at';
AVERAGE: 'average';
BETWEEN: 'between';
BONED: 'boned';
BONELESS: 'boneless';
BONE_IN: 'bone-in';
BY: 'by';
BY_PRODUCT: 'by-product';
CHEMICAL: 'chemical';
COMMON: 'common';
EDITION: 'edition';
FAT: 'fat';
FIRST: 'first';
FOR: 'for';
IN: 'in';
JUDGEMENT: 'judgement';
LAST: 'last';
LEAN: 'lean';
MEASURED: 'measured';
MEMORY: 'memory';
MOST: 'most';
OF: 'of';
OFF: 'off';
ON: 'on';
ONE: 'one';
PART: 'part';
PER: 'per';
POINT: 'point';
PRACTICE: 'practice';
REMAINDER: 'remainder';
REVISION: 'revision';
RIB: 'rib';
SALEABLE: 'saleable';
THE: 'the';
TO: 'to';
TWO: 'two';
VERTEBRA: 'vertebra';
VISUAL: 'visual';
WASTE: 'waste';

// Signs
ARROW: '->' | '→';
PLUS_MINUS: '±' | '+/-';
PERCENT: '%';
COMMA: ',';
SLASH: '/';
MINUS: '-' | '–' | '−';
LBRACE: '{';
RBRACE: '}';
LPAREN: '(';
RPAREN: ')';

NUMBER: DIGIT+ ('.' DIGIT+)? | '.' DIGIT+;
DECIMAL_COMMA: DIGIT+ (',' DIGIT+)+ ('.' DIGIT+)?;

WORD: LETTER (LETTER | MARK | DIGIT | [-'’.&] (LETTER | DIGIT))*;

STRING: '"' (~["\\\r\n] | '\\' ~[\r\n])* '"';
OPEN_STRING: '"' (~["\\\r\n] | '\\' ~[\r\n])*;

NEWLINE: '\r'? '\n' | '\r';
COMMENT: '//' ~[\r\n]* -> channel(HIDDEN);
BLANK: [ \t\u00A0]+ -> skip;
STRAY: .;

fragment DIGIT: [0-9];
fragment LETTER: [\p{L}°];
fragment MARK: [\p{M}];
