package dev.gambrel.tree.rules;

import static dev.gambrel.tree.Sheet.name;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.quantity.Expected;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.tree.Cut;
import dev.gambrel.tree.Description;
import dev.gambrel.tree.Home;
import dev.gambrel.tree.Part;
import dev.gambrel.tree.Portion;
import dev.gambrel.tree.Share;
import dev.gambrel.tree.Sheep;
import dev.gambrel.tree.Sheet;
import dev.gambrel.tree.anatomy.PieceCount;
import dev.gambrel.tree.portion.Limit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.From;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;

/** Whatever figures stand in a tree, the rules answer in sentences. */
class AnyTreeLaws {
    private static final List<String> NUMBERS = List.of(
            "0",
            "100",
            "33.0",
            "-1",
            "0.05",
            "100.05",
            "1E+9999",
            "-1E+9999",
            "1E-9999",
            "9.999999999999999E+308",
            "1E+309",
            "4.9E-324",
            "1E-400",
            "9".repeat(34),
            "0." + "1".repeat(34));

    @Provide
    Arbitrary<Quantity> shares() {
        Arbitrary<String> odd = Arbitraries.of(NUMBERS);
        Arbitrary<String> usual = Arbitraries.bigDecimals()
                .between(BigDecimal.ZERO, BigDecimal.valueOf(100))
                .ofScale(2)
                .map(BigDecimal::toPlainString);
        return Arbitraries.oneOf(odd, usual).map(text -> Quantity.of(text, Unit.PERCENT));
    }

    @Provide
    Arbitrary<Expected> figures() {
        Arbitrary<Quantity> one = shares();
        return Arbitraries.oneOf(
                one.map(Expected.Mean::new),
                Combinators.combine(one, one).as(Expected.PlusMinus::new),
                Combinators.combine(one, one).as(Expected.CentralRange::new));
    }

    private static Cut cut(String name, Expected figure, Expected ofCarcass, List<Part> parts) {
        var derived = new Share.Derived(ofCarcass, name("carcass"));
        Share share = new Share.Stated(figure, List.of(derived), List.of());
        Quantity target = Quantity.rounded(ofCarcass.exactMean(), Unit.GRAM);
        Portion portion = Portion.byWeight(
                name("steak"), new Expected.Mean(target), new Limit.Between(target, target), Sheet.to("diced"));
        return new Cut(
                name(name),
                PieceCount.NOT_STATED,
                share,
                Description.NONE,
                parts,
                new Home.Product(),
                List.of(portion));
    }

    private static Sheet sheet(List<Expected> figures, boolean rest) {
        List<Part> parts = new ArrayList<>();
        for (int i = 0; i < figures.size(); i++) {
            Expected other = figures.get((i + 1) % figures.size());
            List<Part> below = i % 2 == 0 ? List.of() : List.copyOf(parts);
            parts.add(cut(
                    List.of("leg", "shank", "house roll").get(i % 3) + (i < 3 ? "" : " " + i),
                    figures.get(i),
                    other,
                    below));
        }
        if (rest) {
            parts.add(Sheet.rest("mince"));
        }
        return Sheet.of(parts.toArray(Part[]::new)).of(Sheep.sheep());
    }

    @Property(tries = 500)
    void no_figure_of_any_size_makes_a_rule_throw(
            @ForAll @Size(min = 1, max = 6) List<@From("figures") Expected> figures, @ForAll boolean rest) {
        for (Diagnostic finding : Held.against(sheet(figures, rest))) {
            assertFalse(finding.message().isEmpty());
            assertFalse(finding.message().contains("NaN") || finding.message().contains("Infinity"));
        }
    }

    @Property(tries = 200)
    void the_same_tree_gives_the_same_findings(
            @ForAll @Size(min = 1, max = 6) List<@From("figures") Expected> figures, @ForAll boolean rest) {
        assertEquals(Held.against(sheet(figures, rest)), Held.against(sheet(figures, rest)));
    }

    @Property(tries = 300)
    void shares_that_are_closed_with_a_last_part_keep_the_rules(
            @ForAll @Size(min = 1, max = 8) List<@IntRange(max = 1000) Integer> hundredths) {
        List<Part> parts = new ArrayList<>();
        int left = 10_000;
        for (int share : hundredths) {
            parts.add(Sheet.cut(
                    "cut " + parts.size(), BigDecimal.valueOf(share, 2).toPlainString()));
            left -= share;
        }
        parts.add(Sheet.cut("last cut", BigDecimal.valueOf(left, 2).toPlainString()));
        Held.keepsTheRules(Sheet.of(parts.toArray(Part[]::new)));
    }
}
