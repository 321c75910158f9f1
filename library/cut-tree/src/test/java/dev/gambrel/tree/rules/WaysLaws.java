package dev.gambrel.tree.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.Cut;
import dev.gambrel.tree.Description;
import dev.gambrel.tree.Home;
import dev.gambrel.tree.Part;
import dev.gambrel.tree.Share;
import dev.gambrel.tree.Sheet;
import dev.gambrel.tree.Way;
import dev.gambrel.tree.anatomy.PieceCount;
import dev.gambrel.tree.choice.Bound;
import dev.gambrel.tree.choice.Choice;
import dev.gambrel.tree.choice.Condition;
import dev.gambrel.tree.choice.WeightRange;
import dev.gambrel.tree.inspection.ChoiceCode;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** Conditions are held against weights tried one by one: every limit, and one weight on each side of it. */
class WaysLaws {
    private static final BigDecimal HALF_STEP = new BigDecimal("0.05");
    private static final int STEPS = 6;

    @Provide
    Arbitrary<List<List<Bound>>> conditions() {
        Arbitrary<Bound> bounds = Combinators.combine(
                        Arbitraries.of(Bound.Kind.values()),
                        Arbitraries.integers().between(1, STEPS).map(WaysLaws::tenths))
                .as(Bound::new);
        return bounds.list().ofMinSize(1).ofMaxSize(2).list().ofMinSize(1).ofMaxSize(4);
    }

    private static Quantity tenths(int count) {
        return new Quantity(BigDecimal.valueOf(count, 1), Unit.KILOGRAM);
    }

    private static List<Quantity> tried() {
        List<Quantity> weights = new ArrayList<>();
        for (int i = 1; i <= 2 * STEPS + 2; i++) {
            weights.add(new Quantity(HALF_STEP.multiply(BigDecimal.valueOf(i)), Unit.KILOGRAM));
        }
        return weights;
    }

    private static List<Diagnostic> found(List<List<Bound>> conditions) {
        Part[] ways = IntStream.range(0, conditions.size())
                .mapToObj(i -> way("way " + i, new Choice.When(new Condition.PieceWeighs(conditions.get(i)))))
                .toArray(Part[]::new);
        return TreeRules.check(
                Sheet.of(Sheet.cut("topside", "21", ways), Sheet.rest("mince")).tree());
    }

    private static Way way(String name, Choice choice) {
        Cut work = new Cut(
                TradeName.of(name),
                PieceCount.NOT_STATED,
                new Share.NotStated(),
                Description.NONE,
                List.of(),
                new Home.Product(),
                List.of());
        return new Way(work, choice);
    }

    private static boolean has(List<Diagnostic> found, ChoiceCode code) {
        return found.stream().anyMatch(finding -> finding.code() == code);
    }

    @Property(tries = 1000)
    void two_ways_overlap_where_some_weight_goes_both(@ForAll("conditions") List<List<Bound>> conditions) {
        boolean twice = tried().stream()
                .anyMatch(weight -> conditions.stream()
                                .filter(bounds -> WeightRange.within(bounds).holds(weight))
                                .count()
                        > 1);
        assertEquals(twice, has(found(conditions), ChoiceCode.CONDITIONS_OVERLAP));
    }

    @Property(tries = 1000)
    void a_gap_is_told_where_some_weight_goes_nowhere(@ForAll("conditions") List<List<Bound>> conditions) {
        List<Diagnostic> found = found(conditions);
        boolean nowhere = tried().stream()
                .anyMatch(weight -> conditions.stream()
                        .noneMatch(bounds -> WeightRange.within(bounds).holds(weight)));
        boolean toldOtherwise = has(found, ChoiceCode.IMPOSSIBLE_CONDITION);
        assertEquals(nowhere && !toldOtherwise, has(found, ChoiceCode.CONDITIONS_LEAVE_GAP));
    }

    @Property(tries = 1000)
    void a_condition_is_impossible_where_no_weight_meets_it(@ForAll("conditions") List<List<Bound>> conditions) {
        boolean never = conditions.stream()
                .anyMatch(bounds -> tried().stream()
                        .noneMatch(weight -> WeightRange.within(bounds).holds(weight)));
        assertEquals(never, has(found(conditions), ChoiceCode.IMPOSSIBLE_CONDITION));
    }
}
