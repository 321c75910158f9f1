package dev.gambrel.yields.comparison;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.gambrel.tree.Cut;
import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.Part;
import dev.gambrel.yields.RandomSheets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** What holds of any two sheets. */
class ComparisonLaws {
    @Provide
    Arbitrary<CutTree> sheets() {
        return RandomSheets.anySheets();
    }

    @Property
    void a_sheet_does_not_differ_from_itself_in_whatever_order(@ForAll("sheets") CutTree sheet, @ForAll long seed) {
        CutTree mixed = sheet.withParts(mixed(sheet.parts(), new Random(seed)));
        assertEquals(List.of(), Comparison.of(sheet, mixed).changes());
    }

    private static List<Part> mixed(List<Part> parts, Random chance) {
        List<Part> others = new ArrayList<>();
        for (Part part : parts) {
            others.add(
                    part instanceof Cut cut
                            ? new Cut(
                                    cut.name(),
                                    cut.pieces(),
                                    cut.share(),
                                    cut.description(),
                                    mixed(cut.parts(), chance),
                                    cut.home(),
                                    cut.portions())
                            : part);
        }
        Collections.shuffle(others, chance);
        return others;
    }

    @Property
    void as_much_differs_there_as_back(@ForAll("sheets") CutTree one, @ForAll("sheets") CutTree other) {
        Comparison there = Comparison.of(one, other);
        Comparison back = Comparison.of(other, one);
        assertEquals(there.changes().size(), back.changes().size());
        assertEquals(
                there.changes(Effect.TIGHTENS).size(),
                back.changes(Effect.LOOSENS).size());
        assertEquals(
                there.changes(Effect.ALTERS_FIGURES).size(),
                back.changes(Effect.ALTERS_FIGURES).size());
    }

    /** Of what is gone nothing inside is told, so that no change stands below one of those. */
    @Property
    void no_change_stands_below_what_is_gone_or_new(@ForAll("sheets") CutTree one, @ForAll("sheets") CutTree other) {
        List<Change> changes = Comparison.of(one, other).changes();
        for (Change whole : changes) {
            boolean isWhole = whole.is() instanceof Said.NotThere || whole.was() instanceof Said.NotThere;
            long below = changes.stream()
                    .filter(change -> isWhole && !change.path().equals(whole.path()))
                    .filter(change -> change.path().isWithin(whole.path()))
                    .count();
            assertEquals(0, below, whole.toString());
        }
    }
}
