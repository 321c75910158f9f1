package dev.gambrel.yields.conformance;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.anatomy.OtherName;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** What of the house's answers to a name. */
class MatcherTest {
    private static final Offers.Within ALL = new Offers.Within(0, 100);

    private static Offer offer(int order, String name, String... others) {
        List<OtherName> also = List.of(others).stream()
                .map(other -> new OtherName(TradeName.of(other), List.of()))
                .toList();
        TreePath path = TreePath.ROOT.then(TradeName.of(name + " of " + order));
        Names names = new Names(TradeName.of(name), also, List.of(), List.of());
        return new Offer(order, new Product(Product.Kind.CUT, path), names, List.of(), null);
    }

    @Test
    void a_name_counts_before_what_something_is_also_called() {
        Offer leg = offer(0, "leg");
        Offer haunch = offer(1, "haunch", "leg");
        Matcher matcher = new Matcher(List.of(leg, haunch));
        assertEquals(List.of(leg), matcher.matching(offer(9, "Leg"), ALL));
        assertEquals(List.of(haunch), matcher.matching(offer(9, "haunch"), ALL));
    }

    @Test
    void either_side_may_call_it_otherwise() {
        Offer haunch = offer(0, "haunch", "gigot");
        Matcher matcher = new Matcher(List.of(haunch));
        assertEquals(List.of(haunch), matcher.matching(offer(9, "gigot"), ALL));
        assertEquals(List.of(haunch), matcher.matching(offer(9, "leg", "haunch"), ALL));
        assertEquals(List.of(), matcher.matching(offer(9, "leg"), ALL));
    }

    @Test
    void of_several_all_are_found_and_nobody_is_chosen() {
        Offer one = offer(3, "shank");
        Offer other = offer(7, "shank");
        Matcher matcher = new Matcher(List.of(one, other));
        assertEquals(List.of(one, other), matcher.matching(offer(9, "shank"), ALL));
        assertEquals(List.of(other), matcher.matching(offer(9, "shank"), new Offers.Within(5, 9)));
    }

    @Test
    void of_very_many_only_the_first_are_looked_at() {
        List<Offer> many =
                IntStream.range(0, 50).mapToObj(i -> offer(i, "steak")).toList();
        assertEquals(many.subList(0, Matcher.MOST), new Matcher(many).matching(offer(99, "steak"), ALL));
    }
}
