package dev.gambrel.yields.working;

import dev.gambrel.text.TradeName;
import java.util.ArrayList;
import java.util.List;

/**
 * What a run says of how its carcasses are worked. Of what it does not say, the specification's rules, shares and
 * conditions hold. Immutable; safe between threads.
 *
 * <pre>{@code
 * Working winter = Working.AS_WRITTEN
 *         .ordering(Order.all(new TreePath(List.of(TradeName.of("topside"))), TradeName.of("whole joint")))
 *         .given(TradeName.of("season"), TradeName.of("winter"));
 * }</pre>
 *
 * @param orders what is asked for, of different cuts
 * @param grades the grades that the carcasses are known to have
 * @param pairs how the two pieces of a pair vary together
 */
public record Working(List<Order> orders, List<Given> grades, Pairs pairs) {
    /** Nothing is asked for, no grade is known, and pairs are alike. */
    public static final Working AS_WRITTEN = new Working(List.of(), List.of());

    /** Copies the lists. */
    public Working {
        orders = List.copyOf(orders);
        grades = List.copyOf(grades);
    }

    /**
     * A working in which pairs are alike.
     *
     * @param orders what is asked for, of different cuts
     * @param grades the grades that the carcasses are known to have
     */
    public Working(List<Order> orders, List<Given> grades) {
        this(orders, grades, Pairs.ALIKE);
    }

    /**
     * A grade that a carcass has.
     *
     * @param grade the grade's name
     * @param value its value
     */
    public record Given(TradeName grade, TradeName value) {}

    /**
     * The same with one order more.
     *
     * @param order of a cut that nothing was asked of yet
     * @return the fuller working
     */
    public Working ordering(Order order) {
        return new Working(plus(orders, order), grades, pairs);
    }

    /**
     * The same with one grade more.
     *
     * @param grade the grade's name
     * @param value the value that the carcasses have
     * @return the fuller working
     */
    public Working given(TradeName grade, TradeName value) {
        return new Working(orders, plus(grades, new Given(grade, value)), pairs);
    }

    /**
     * The same with pairs that vary in another way.
     *
     * @param others how the two pieces of a pair vary together
     * @return the working so told
     */
    public Working with(Pairs others) {
        return new Working(orders, grades, others);
    }

    private static <T> List<T> plus(List<T> list, T item) {
        List<T> longer = new ArrayList<>(list);
        longer.add(item);
        return longer;
    }
}
