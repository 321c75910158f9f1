package dev.gambrel.tree.rules.choice;

import dev.gambrel.tree.Way;
import dev.gambrel.tree.choice.Condition;

/** A way with its condition. */
record Conditioned(Way way, Condition condition) {
    /** Whether both ask about the same thing. */
    boolean isLike(Conditioned other) {
        if (condition instanceof Condition.Graded one && other.condition instanceof Condition.Graded two) {
            return one.grade().equals(two.grade());
        }
        return condition.getClass() == other.condition.getClass();
    }
}
