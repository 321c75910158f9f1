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
    | WORKED AS name figure? tail
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
    | (SPECIFICATION | REQUIREMENT) STRING REVISION NUMBER FOR name tail # specificationLine
    | CARCASS basis tail                               # carcassLine
    | FROM basis TO basis tail                         # fromLine
    | STREAM name tail                                 # streamLine
    | GRADE name (COMMA NEWLINE* gradeValue)+          # gradeLine
    | BONE name figure? tail                           # boneLine
    | MUSCLE name tail                                 # muscleLine
    | GLAND name tail                                  # glandLine
    | TRIM FAT fatLimit* figure? tail                  # trimLine
    | REMOVE name figure? tail                         # removeLine
    | SQUARE OFF figure? tail                          # squareLine
    | LOSS name figure? tail                           # lossLine
    | REST tail                                        # restLine
    | PORTION name (expectation THICK?)? tail          # portionLine
    | SEPARATE tools? landmark?                        # separateLine
    | SCORE name                                       # scoreLine
    | LEAVE name STRING?                               # leaveLine
    | REFERENCE name itemNumber (EDITION NUMBER)? tail # referenceLine
    | NOTE STRING                                      # noteLine
    | CONTAINS name (COMMA NEWLINE* name)*             # containsLine
    | ALLOW name STRING?                               # allowLine
    | RIBS count tail                                  # ribsLine
    | VERTEBRAE WORD count tail                        # vertebraeLine
    | MEASURE name tail                                # measureLine
    | ESTIMATE name EQUALS NEWLINE* expression tail    # estimateLine
    | (WEIGHT | THICKNESS | LEAN | KEEP | AGE | LIFE) clause (COMMA NEWLINE* clause)* # termLine
    | PACK (IN name | (ONE | TWO | NUMBER) TO name)    # packLine
    | (CLAIM | LABEL) name (COMMA NEWLINE* name)*      # claimLine
    | PUBLISHED figure tail                            # publishedLine
    ;

unknownStatement
    : ~(
        LANGUAGE | USE | REVISES | ADD | OMIT | SOURCE | SPECIFICATION | REQUIREMENT | CARCASS | FROM | STREAM | GRADE | CUT | WORKED
        | BONE | MUSCLE | GLAND | TRIM | REMOVE | SQUARE | LOSS | REST | PORTION | SEPARATE | SCORE | LEAVE | REFERENCE
        | NOTE | CONTAINS | ALLOW | SPECIES | RIBS | VERTEBRAE | PIECE | MEASURE | ESTIMATE | WEIGHT | THICKNESS | LEAN | KEEP
        | AGE | LIFE | PACK | CLAIM | LABEL | PUBLISHED | NEWLINE | LBRACE | RBRACE
    ) (~(NEWLINE | LBRACE | RBRACE))*
    ;

// What may follow a statement's own words, with commas between
tail: (COMMA NEWLINE* clause)* (ARROW name (COMMA NEWLINE* clause)*)?;

clause
    : expectation (OF name | THICK | RIBS | EQUALS name)?                             # figureClause
    | (ONE PER CARCASS | TWO (PER CARCASS | PEOPLE))                     # countClause
    | BONE IN                                                            # boneInClause
    | BONE_IN                                                            # boneInClause
    | PART BONED                                                         # partBonedClause
    | BONELESS                                                           # bonelessClause
    | RIBS NUMBER TO NUMBER                                              # ribsClause
    | SOURCE name                                                        # sourceClause
    | LEAN expectation (VISUAL | CHEMICAL)?                              # leanClause
    | (SALEABLE | BY_PRODUCT | WASTE)                                    # kindClause
    | ALSO name (LPAREN name (COMMA name)* RPAREN)?                      # alsoClause
    | REMAINDER ARROW name                                               # remainderClause
    | BETWEEN quantity AND quantity limitEnd?                            # betweenClause
    | AT (LEAST | MOST) quantity limitEnd?                               # boundClause
    | EXACTLY quantity limitEnd?                                         # exactlyClause
    | (INTO NUMBER | WHOLE | HALVED)                                     # numberClause
    | (WEIGHT | THICKNESS) RULES                                         # precedenceClause
    | SMALLEST quantity                                                  # smallestClause
    | END PIECES expectation? ARROW name                                 # endPiecesClause
    | KERF quantity                                                      # kerfClause
    | LENGTH expectation                                                 # lengthClause
    | (ACROSS | ALONG) name                                              # directionClause
    | TIED (NUMBER TIMES | EVERY quantity)                               # tiedClause
    | NETTED quantity                                                    # nettedClause
    | PACKED (ONE | TWO | NUMBER) TO name                                # packedClause
    | TARE name quantity                                                 # tareClause
    | AFTER name                                                         # afterClause
    | PAIR MATCHED (WITHIN quantity)?                                    # matchedClause
    | PLANED                                                             # planedClause
    | PRACTICALLY FREE                                                   # practicallyFreeClause
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
    | ESTIMATED BY name                                                  # estimatedClause
    | AS name                                                            # asClause
    | WHEN condition                                                     # whenClause
    | (WORD | OVER | UNDER | ON) name?                                   # wordsClause
    ;

// What is limited, from when it counts, where it is taken, or that so many may be outside
limitEnd: THICK | VISUAL | CHEMICAL | OUTSIDE | FROM name | AT name | FOR name EQUALS name;

// When a cut is worked in a way
condition: subject IS (weightLimit (AND weightLimit)? | gradeValue (TO gradeValue | (OR gradeValue)*));

// A name up to "is".
subject
    : ~(
        IS | ARROW | PLUS_MINUS | EQUALS | PLUS | MULTIPLIED | PERCENT | COMMA | SLASH | MINUS | LBRACE | RBRACE | LPAREN | RPAREN
        | NUMBER | DECIMAL_COMMA | STRING | OPEN_STRING | NEWLINE | STRAY
    )+
    | STRING
    ;

weightLimit: (UNDER | OVER | AT (MOST | LEAST)) quantity;

// Classes of carcasses may end in a sign: O+, R-.
gradeValue
    : NUMBER WORD?
    | STRING
    | ~(
        UNDER | OVER | AT | AND | OR | TO | ARROW | PLUS_MINUS | EQUALS | PLUS | MULTIPLIED | PERCENT | COMMA | SLASH | MINUS | LBRACE
        | RBRACE | LPAREN | RPAREN | NUMBER | DECIMAL_COMMA | STRING | OPEN_STRING | NEWLINE | STRAY
    )+ (PLUS | MINUS)?
    ;

// Equations; a line may go on after a sign
expression: MINUS? product ((PLUS | MINUS) NEWLINE* product)*;

product: factor ((MULTIPLIED | SLASH) NEWLINE* factor)*;

factor: coefficient | name | LPAREN expression RPAREN;

coefficient: (NUMBER | DECIMAL_COMMA) unit? (PER unit)*;

// Figures
figure: expectation (OF name)?;

expectation: quantity ((PLUS_MINUS | TO) quantity)?;

daily: number unit ((PLUS_MINUS | TO) number unit)?;

quantity: number (unit (number unit?)?)?;

number: MINUS? (NUMBER | DECIMAL_COMMA) (SLASH NUMBER | NUMBER SLASH NUMBER)?;

unit: PERCENT | IN | DAY | WORD;

count: NUMBER (TO NUMBER)?;

fatLimit: (TO | AND) AT MOST quantity (AT ANY POINT | ON AVERAGE);

// Where a cut is made
tools: BY WORD (AND WORD)*;

landmark
    : BETWEEN point AND point                  # betweenLandmark
    | AT name (quantity FROM name)?            # atLandmark
    | ALONG name                               # alongLandmark
    | PARALLEL TO name                         # parallelLandmark
    | distance (COMMA NEWLINE* distance)*      # distanceLandmark
    | STRING                                   # wordsLandmark
    ;

distance: quantity FROM name;

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
    : ~(
        ARROW | PLUS_MINUS | EQUALS | PLUS | MULTIPLIED | PERCENT | COMMA | SLASH | MINUS | LBRACE | RBRACE | LPAREN | RPAREN | NUMBER
        | DECIMAL_COMMA | STRING | OPEN_STRING | NEWLINE | STRAY
    )+
    | STRING
    ;
