/*
 * The words of the language. Every character of a text belongs to some token, so reading words never fails;
 * what does not belong is a token of its own kind and is reported by the parser's adapter.
 *
 * Keywords are found by looking a word up, not by the automaton: it stays small, and starts and runs faster.
 */
lexer grammar GambrelLexer;

options {
    superClass = KeywordLexer;
}

@header {
import dev.gambrel.compiler.internal.KeywordLexer;
}

tokens {
    // Statements, from LANGUAGE to PUBLISHED
    LANGUAGE, USE, REVISES, ADD, OMIT, SOURCE, SPECIFICATION, REQUIREMENT, CARCASS, FROM, STREAM, GRADE, CUT, WORKED, BONE, MUSCLE,
    GLAND, TRIM, REMOVE, SQUARE, LOSS, REST, PORTION, SEPARATE, SCORE, LEAVE, REFERENCE, NOTE, CONTAINS, ALLOW, SPECIES,
    RIBS, VERTEBRAE, PIECE, MEASURE, ESTIMATE, WEIGHT, THICKNESS, LEAN, KEEP, AGE, LIFE, PACK, CLAIM, LABEL, PUBLISHED,

    // Words within statements
    ALONG, ALSO, AND, ANY, AT, AVERAGE, BECAUSE, BETWEEN, BONED, BONELESS, BONE_IN, BUT, BY, BY_PRODUCT, CHEMICAL, COMMON,
    DAY, DIFFERENCE, EDITION, FAT, FIRST, FOR, FORCE, IN, JUDGEMENT, LAST, MEASURED, MEMORY, MOST, OF, OFF, ON, ONE,
    ONLY, PART, PER, POINT, PRACTICE, REMAINDER, REPLACES, REVISION, RIB, SALEABLE, THE, THEN, TO, TWO, VERTEBRA, VISUAL,

    // Of portions and of the bench
    ACROSS, AFTER, END, EVERY, FREE, HALVED, INTO, KERF, LEAST, LENGTH, MATCHED, NETTED, PACKED, PAIR, PARALLEL, PEOPLE,
    PIECES, PLANED, PRACTICALLY, RULES, SMALLEST, TARE, THICK, TIED, TIMES, WHOLE, WITHIN,

    // Of ways of working
    AS, IS, OR, OVER, UNDER, WHEN,

    // Of estimates
    ESTIMATED,

    // Of terms of supply
    EXACTLY, OUTSIDE,

    // The last of all words; the keywords are those from LANGUAGE to this
    WASTE
}

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

// Signs of equations; elsewhere they are strays
EQUALS: '=';
PLUS: '+';
MULTIPLIED: '×' | '*';

NUMBER: DIGIT+ ('.' DIGIT+)? | '.' DIGIT+;
DECIMAL_COMMA: DIGIT+ (',' DIGIT+)+ ('.' DIGIT+)?;

WORD: LETTER (LETTER | DIGIT | SQUARED | [-'’.&] (LETTER | DIGIT))*;

STRING: '"' (~["\\\r\n] | '\\' ~[\r\n])* '"';
OPEN_STRING: '"' (~["\\\r\n] | '\\' ~[\r\n])* '\\'?;

NEWLINE: '\r'? '\n' | '\r';
COMMENT: '//' ~[\r\n]* -> channel(HIDDEN);
BLANK: [ \t\u00A0]+ -> skip;
STRAY: .;

fragment DIGIT: [0-9];
fragment SQUARED: '²';
// Letters of every script with their marks, given as few wide ranges so that the automaton stays small; general
// punctuation, arrows, mathematical signs and private characters lie outside them. What a name may hold is checked later.
fragment LETTER: [a-zA-Z°µÀ-ÖØ-öø-\u1FFF\u2C00-\uD7FF\uF900-\u{10FFFF}];
