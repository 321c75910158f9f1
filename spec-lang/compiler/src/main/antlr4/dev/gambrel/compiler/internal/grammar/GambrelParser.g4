/*
 * A specification, line by line. Each statement starts with its keyword and each clause with a word or a figure of its
 * own, so one token of look-ahead decides everywhere. What a statement may carry, and where it may stand, is told by
 * the compiler in words a processor understands; the grammar only finds the pieces.
 */
parser grammar GambrelParser;

options {
    tokenVocab = GambrelLexer;
}

file: line* EOF;

line: NEWLINE | statement | loneBlock | strayBrace;

// Any line may be followed by braces here; the compiler tells which lines may have them. So a brace in the wrong place
// costs one message and not the rest of the file. The adapter puts a line end before a closing brace and at the end.
statement: (blockHeader | simpleStatement | unknownStatement) block* NEWLINE;

block: LBRACE blockLine* RBRACE;

blockLine: NEWLINE | statement | loneBlock;

loneBlock: block+ NEWLINE;

strayBrace: RBRACE;

// Statements that may hold others
blockHeader
    : CUT name figure? tail
    | SPECIES name tail
    | PIECE name tail
    | ADD
    ;

// Statements of one line
simpleStatement
    : LANGUAGE NUMBER                                  # languageLine
    | USE STRING                                       # useLine
    | REVISES STRING                                   # revisesLine
    | OMIT name tail                                   # omitLine
    | SOURCE name tail                                 # sourceLine
    | SPECIFICATION STRING REVISION NUMBER FOR name tail # specificationLine
    | CARCASS basis tail                               # carcassLine
    | FROM basis TO basis tail                         # fromLine
    | STREAM name tail                                 # streamLine
    | BONE name figure? tail                           # boneLine
    | MUSCLE name tail                                 # muscleLine
    | GLAND name tail                                  # glandLine
    | TRIM FAT fatLimit* figure? tail                  # trimLine
    | REMOVE name figure? tail                         # removeLine
    | SQUARE OFF figure? tail                          # squareLine
    | LOSS name figure? tail                           # lossLine
    | REST tail                                        # restLine
    | PORTION name figure? tail                        # portionLine
    | SEPARATE tools? landmark?                        # separateLine
    | REFERENCE name itemNumber (EDITION NUMBER)? tail # referenceLine
    | NOTE STRING                                      # noteLine
    | CONTAINS name (COMMA NEWLINE* name)*             # containsLine
    | RIBS count tail                                  # ribsLine
    | VERTEBRAE WORD count tail                        # vertebraeLine
    | MEASURE name tail                                # measureLine
    | ESTIMATE name EQUALS NEWLINE* expression tail    # estimateLine
    | PUBLISHED figure tail                            # publishedLine
    ;

unknownStatement
    : ~(
        LANGUAGE | USE | REVISES | ADD | OMIT | SOURCE | SPECIFICATION | CARCASS | FROM | STREAM | CUT | BONE | MUSCLE | GLAND | TRIM | REMOVE
        | SQUARE | LOSS | REST | PORTION | SEPARATE | REFERENCE | NOTE | CONTAINS | SPECIES | RIBS | VERTEBRAE | PIECE
        | MEASURE | ESTIMATE | PUBLISHED | NEWLINE | LBRACE | RBRACE
    ) (~(NEWLINE | LBRACE | RBRACE))*
    ;

// What may follow a statement's own words, with commas between
tail: (COMMA NEWLINE* clause)* (ARROW name (COMMA NEWLINE* clause)*)?;

clause
    : figure (EQUALS name)?                                              # figureClause
    | (ONE | TWO) PER CARCASS                                            # countClause
    | BONE IN                                                            # boneInClause
    | BONE_IN                                                            # boneInClause
    | PART BONED                                                         # partBonedClause
    | BONELESS                                                           # bonelessClause
    | RIBS NUMBER TO NUMBER                                              # ribsClause
    | SOURCE name                                                        # sourceClause
    | LEAN quantity (VISUAL | CHEMICAL)?                                 # leanClause
    | (SALEABLE | BY_PRODUCT | WASTE)                                    # kindClause
    | ALSO name (LPAREN name (COMMA name)* RPAREN)?                      # alsoClause
    | REMAINDER ARROW name                                               # remainderClause
    | BETWEEN quantity AND quantity                                      # betweenClause
    | LOSS name figure?                                                  # lossClause
    | (PUBLISHED | MEASURED | JUDGEMENT | MEMORY | COMMON PRACTICE) STRING # sourceKindClause
    | DIFFERENCE (FROM | TO) name                                        # differenceClause
    | REPLACES NUMBER                                                    # replacesClause
    | IN (FORCE FROM date | unit)                                        # inClause
    | BECAUSE STRING                                                     # becauseClause
    | BUT STRING                                                         # butClause
    | ONLY FROM name                                                     # onlyFromClause
    | THEN daily (WORD | PER) DAY FOR quantity                            # hangingClause
    | STRING                                                             # textClause
    | PLUS_MINUS quantity                                                # spreadClause
    | FOR name figure                                                    # heldClause
    | AT (LEAST | MOST) quantity (FOR name EQUALS name)?                 # boundClause
    | ESTIMATED BY name                                                  # estimatedClause
    | WORD name?                                                         # wordsClause
    ;

// Equations; a line may go on after a sign
expression: MINUS? product ((PLUS | MINUS) NEWLINE* product)*;

product: factor ((TIMES | SLASH) NEWLINE* factor)*;

factor: coefficient | name | LPAREN expression RPAREN;

coefficient: (NUMBER | DECIMAL_COMMA) unit? (PER unit)*;

// Figures
figure: quantity ((PLUS_MINUS | TO) quantity)? (OF name)?;

daily: number unit ((PLUS_MINUS | TO) number unit)?;

quantity: number (unit (number unit?)?)?;

number: MINUS? (NUMBER | DECIMAL_COMMA) (SLASH NUMBER | NUMBER SLASH NUMBER)?;

unit: PERCENT | IN | DAY | WORD;

count: NUMBER (TO NUMBER)?;

fatLimit: (TO | AND) AT MOST quantity (AT ANY POINT | ON AVERAGE);

// Where a cut is made
tools: BY WORD (AND WORD)*;

landmark
    : BETWEEN point AND point # betweenLandmark
    | AT name                 # atLandmark
    | ALONG name              # alongLandmark
    | STRING                  # wordsLandmark
    ;

point
    : THE? (
        RIB NUMBER
        | (FIRST | LAST) (RIB | WORD VERTEBRA?)
        | WORD VERTEBRA? NUMBER
    )
    ;

itemNumber: NUMBER WORD? | STRING;

date: NUMBER (MINUS NUMBER MINUS NUMBER | WORD NUMBER);

basis: IN? WORD;

// A trade name as spoken: any words, even those of the language, or anything in quotes
name
    : (
        WORD | LANGUAGE | USE | REVISES | ADD | OMIT | SOURCE | SPECIFICATION | CARCASS | FROM | STREAM | CUT | BONE | MUSCLE | GLAND | TRIM
        | REMOVE | SQUARE | LOSS | REST | PORTION | SEPARATE | REFERENCE | NOTE | CONTAINS | SPECIES | RIBS | VERTEBRAE
        | PIECE | MEASURE | ESTIMATE | PUBLISHED | ALONG | ALSO | AND | ANY | AT | AVERAGE | BECAUSE | BETWEEN | BONED | BONELESS | BONE_IN | BUT | BY
        | BY_PRODUCT | CHEMICAL | COMMON | DAY | DIFFERENCE | EDITION | ESTIMATED | FAT | FIRST | FOR | FORCE | IN | JUDGEMENT | LAST | LEAN | LEAST | MEASURED | MEMORY
        | MOST | OF | OFF | ON | ONE | ONLY | PART | PER | POINT | PRACTICE | REMAINDER | REPLACES | REVISION | RIB | SALEABLE | THE | THEN | TO
        | TWO | VERTEBRA | VISUAL | WASTE
    )+
    | STRING
    ;
