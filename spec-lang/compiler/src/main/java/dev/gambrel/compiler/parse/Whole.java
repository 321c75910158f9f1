package dev.gambrel.compiler.parse;

import org.antlr.v4.runtime.ParserRuleContext;
import org.antlr.v4.runtime.tree.ParseTree;

/** Whether something was read to its end. A fault is noted only on the innermost rule that it stopped. */
final class Whole {
    private Whole() {}

    static boolean is(ParserRuleContext context) {
        if (context == null || context.exception != null) {
            return false;
        }
        for (int i = 0; i < context.getChildCount(); i++) {
            ParseTree child = context.getChild(i);
            if (child instanceof ParserRuleContext inner && !is(inner)) {
                return false;
            }
        }
        return true;
    }
}
