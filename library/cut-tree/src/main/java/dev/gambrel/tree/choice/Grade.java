package dev.gambrel.tree.choice;

import dev.gambrel.text.TradeName;
import java.util.List;

/**
 * A class that every carcass falls into, such as its fat class or the season it is cut in.
 *
 * @param name what it is called
 * @param values what it can be, in the order in which "3L to 4H" is meant
 */
public record Grade(TradeName name, List<TradeName> values) {
    /** Copies the list. */
    public Grade {
        values = List.copyOf(values);
    }

    /**
     * Whether a carcass of one of the values meets a condition on this grade.
     *
     * @param condition a condition that asks about this grade
     * @param value one of its values
     * @return true if the condition names the value, or the value lies between the two that it names
     */
    public boolean meets(Condition.Graded condition, TradeName value) {
        if (condition instanceof Condition.GradeFrom from) {
            int at = values.indexOf(value);
            return at >= values.indexOf(from.first()) && at <= values.indexOf(from.last());
        }
        return condition.named().contains(value);
    }
}
