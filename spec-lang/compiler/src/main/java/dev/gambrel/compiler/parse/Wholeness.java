package dev.gambrel.compiler.parse;

import org.antlr.v4.runtime.ParserRuleContext;
import org.antlr.v4.runtime.tree.ParseTree;

/**
 * Whether a piece of a line was read whole. In a text that read straight through everything was, and nothing is looked
 * at; only after recovery may a piece lack some of its own.
 *
 * @param readStraight whether the text read straight through
 */
record Wholeness(boolean readStraight) {
    boolean of(ParserRuleContext piece) {
        return piece != null && (readStraight || isWhole(piece));
    }

    private static boolean isWhole(ParserRuleContext piece) {
        if (piece.exception != null || piece.children == null) {
            return false;
        }
        for (ParseTree child : piece.children) {
            if (child instanceof ParserRuleContext inner && !isWhole(inner)) {
                return false;
            }
        }
        return true;
    }
}
