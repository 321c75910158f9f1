package dev.gambrel.tree.rules;

import static dev.gambrel.tree.Sheet.cut;
import static dev.gambrel.tree.Sheet.rest;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.limits.Limits;
import dev.gambrel.tree.Cut;
import dev.gambrel.tree.Part;
import dev.gambrel.tree.Sheet;
import dev.gambrel.tree.inspection.TreeCode;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class TreeSizeTest {
    private static List<String> messages(Sheet sheet, int nesting, int nodes) {
        Limits limits = new Limits(1, nesting, 1, 1, 1, nodes, 1);
        return TreeRules.check(sheet.tree(), limits, Set.of()).stream()
                .map(Diagnostic::message)
                .toList();
    }

    /** A cut in a cut in a cut. */
    private static Sheet nested(int cuts) {
        Cut innermost = cut("cut " + cuts, "100");
        for (int i = cuts - 1; i > 0; i--) {
            innermost = cut("cut " + i, "100", innermost);
        }
        return Sheet.of(innermost);
    }

    private static Sheet parts(int count) {
        return Sheet.of(IntStream.rangeClosed(1, count)
                .mapToObj(i -> i == 1 ? rest("mince") : cut("cut " + i, "0"))
                .toArray(Part[]::new));
    }

    @Test
    void cuts_lie_as_deep_as_is_taken_and_no_deeper() {
        assertEquals(List.of(), messages(nested(5), 5, 100));
        assertEquals(List.of("The cut 5 lies 6 cuts deep; at most 5 are taken."), messages(nested(6), 5, 100));
    }

    @Test
    void the_usual_depth_is_100() {
        assertEquals(List.of(), TreeRules.check(nested(100).tree()));
        assertEquals(TreeCode.TOO_DEEP, Held.against(nested(101)).get(0).code());
    }

    @Test
    void any_depth_is_refused_without_harm() {
        assertEquals(1, Held.against(nested(20_000)).size());
    }

    @Test
    void as_many_parts_are_taken_as_the_limit_says() {
        assertEquals(List.of(), messages(parts(20), 5, 20));
        assertEquals(List.of("The tree has 21 parts; at most 20 are taken."), messages(parts(21), 5, 20));
    }

    @Test
    void parts_of_parts_count_too() {
        Sheet sheet = Sheet.of(cut("leg", "100", cut("chump", "50"), cut("shank", "50")));
        assertEquals(List.of(), messages(sheet, 5, 3));
        assertEquals(List.of("The tree has 3 parts; at most 2 are taken."), messages(sheet, 5, 2));
    }

    @Test
    void the_usual_number_is_50_000() {
        assertEquals(List.of(), Held.against(parts(50_000)));
        Held.breaks(parts(50_001), TreeCode.TOO_MANY_PARTS);
    }

    @Test
    void beyond_a_limit_no_other_rule_is_asked() {
        Sheet broken = Sheet.of(cut("leg", "400"), cut("leg", "400"), rest("nowhere"));
        assertEquals(1, messages(broken, 5, 2).size());
    }
}
