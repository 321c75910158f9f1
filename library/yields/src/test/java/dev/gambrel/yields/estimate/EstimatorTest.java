package dev.gambrel.yields.estimate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.diagnostic.Result;
import dev.gambrel.quantity.Expected;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.Basis;
import dev.gambrel.tree.Carcass;
import dev.gambrel.tree.Cut;
import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.Description;
import dev.gambrel.tree.Home;
import dev.gambrel.tree.Part;
import dev.gambrel.tree.Share;
import dev.gambrel.tree.WeightBand;
import dev.gambrel.tree.anatomy.PieceCount;
import dev.gambrel.tree.estimate.Adjustment;
import dev.gambrel.tree.estimate.Equation;
import dev.gambrel.tree.estimate.Expression;
import dev.gambrel.tree.estimate.Expression.Coefficient;
import dev.gambrel.tree.estimate.Expression.Named;
import dev.gambrel.tree.estimate.Expression.Negative;
import dev.gambrel.tree.estimate.Expression.Product;
import dev.gambrel.tree.estimate.Expression.Sum;
import dev.gambrel.tree.estimate.Measure;
import dev.gambrel.tree.estimate.Predictors;
import dev.gambrel.tree.estimate.Scale;
import dev.gambrel.tree.estimate.ValidRange;
import dev.gambrel.yields.CarcassWeight;
import dev.gambrel.yields.Sheet;
import dev.gambrel.yields.Yields;
import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Legs are estimated as 36 % less 0.4 % for each millimetre of fat, ± 0.9 %; all figures invented. */
class EstimatorTest {
    private static final TradeName FAT = name("back fat");
    private static final TradeName LEGS = name("legs");
    private static final TradeName GRADE = name("grade");
    private static final TradeName MUSCLING = name("muscling");
    private static final CarcassWeight WEIGHT = new CarcassWeight(Quantity.of("22", Unit.KILOGRAM), Basis.COLD);

    private final CutTree tree = tree();

    private static TradeName name(String name) {
        return TradeName.of(name);
    }

    private static CutTree tree() {
        Measure fat = new Measure(FAT, new Scale.In(Unit.MILLIMETRE), "over the rib", new ValidRange.NotStated());
        Measure muscling = new Measure(
                MUSCLING,
                new Scale.Scored(List.of(
                        new Scale.Score(name("thin"), BigDecimal.ONE),
                        new Scale.Score(name("thick"), new BigDecimal(3)))),
                "",
                new ValidRange.NotStated());
        Expression perMillimetre = new Product(
                List.of(new Coefficient(Quantity.of("0.4", Unit.PERCENT), List.of(Unit.MILLIMETRE)), new Named(FAT)));
        Expression legs = new Sum(
                List.of(new Coefficient(Quantity.of("36", Unit.PERCENT), List.of()), new Negative(perMillimetre)));
        Equation.Residual spread = new Equation.Residual.Stated(Quantity.of("0.9", Unit.PERCENT));
        Expression grade = new Product(
                List.of(new Coefficient(Quantity.of("0.5", Unit.NUMBER), List.of(Unit.PERCENT)), new Named(LEGS)));
        List<Adjustment> adjustments = List.of(
                new Adjustment.AtLeast(
                        Quantity.of("18", Unit.NUMBER), new Adjustment.Condition.Scored(MUSCLING, name("thin"))),
                new Adjustment.DecimalsDropped());
        Predictors predictors = new Predictors(
                List.of(fat, muscling),
                List.of(
                        equation(GRADE, grade, adjustments, new Equation.Residual.NotStated()),
                        equation(LEGS, legs, List.of(), spread)));
        WeightBand band = new WeightBand.NotStated();
        Carcass carcass = new Carcass(Basis.COLD, List.of(), band, List.of(), List.of(), predictors);
        Cut leg = new Cut(
                name("leg"),
                PieceCount.TWO,
                new Share.Estimated(LEGS),
                Description.NONE,
                List.of(),
                new Home.Product(),
                List.of());
        return Sheet.tree(carcass, leg, new Part.Rest(new Home.ToStream(name("mince"))));
    }

    private static Equation equation(
            TradeName name, Expression expression, List<Adjustment> adjustments, Equation.Residual spread) {
        return new Equation(name, expression, new Equation.Told.NotStated(), List.of(), adjustments, spread, List.of());
    }

    private static Measurements fat(String amount, Unit unit) {
        return Measurements.NONE.with(FAT, Quantity.of(amount, unit));
    }

    private static List<String> slugs(Result<?> result) {
        return result.diagnostics().stream()
                .map(finding -> finding.code().slug())
                .toList();
    }

    @Test
    void a_share_with_the_residual_spread_of_its_equation() {
        Estimated legs =
                Estimator.of(tree).estimate(LEGS, fat("7.5", Unit.MILLIMETRE)).orElseThrow();
        assertEquals("33 %", legs.value().toString());
        assertEquals("33 % ± 0.9 %", legs.expected().toString());
    }

    @Test
    void a_spread_that_is_not_stated_is_not_nothing() {
        Measurements given = fat("7.5", Unit.MILLIMETRE).with(MUSCLING, name("thick"));
        Expected grade = Estimator.of(tree).estimate(GRADE, given).orElseThrow().expected();
        assertTrue(grade.standardDeviation().isEmpty());
        assertEquals("16", grade.toString());
    }

    @Test
    void a_limit_for_one_score_holds_whether_the_word_or_its_number_was_given() {
        Measurements given = fat("7.5", Unit.MILLIMETRE);
        Estimator estimator = Estimator.of(tree);
        for (Measurements thin :
                List.of(given.with(MUSCLING, name("THIN")), given.with(MUSCLING, Quantity.of("1.0", Unit.NUMBER)))) {
            assertEquals(
                    "18", estimator.estimate(GRADE, thin).orElseThrow().value().toString());
        }
        Measurements between = given.with(MUSCLING, Quantity.of("1.5", Unit.NUMBER));
        assertEquals(
                "16", estimator.estimate(GRADE, between).orElseThrow().value().toString());
    }

    @Test
    void what_another_estimate_stands_on_is_needed_too() {
        assertEquals(List.of(FAT), Estimator.of(tree).needs(LEGS));
        assertEquals(2, Estimator.of(tree).needs(GRADE).size());
        assertEquals(
                List.of("measurement-missing", "measurement-missing"),
                slugs(Estimator.of(tree).estimate(GRADE, Measurements.NONE)));
        assertThrows(
                IllegalArgumentException.class, () -> Estimator.of(tree).estimate(name("no such"), Measurements.NONE));
    }

    @Test
    void the_estimated_share_is_put_in_and_the_rest_gives_way() {
        var yields =
                Yields.of(tree).forCarcass(WEIGHT, fat("7.5", Unit.MILLIMETRE)).orElseThrow();
        assertEquals(
                7.26, yields.carcass().parts().get(0).allPieces().orElseThrow().mean(), 1e-12);
        assertEquals(
                14.74, yields.carcass().parts().get(1).allPieces().orElseThrow().mean(), 1e-12);
        assertEquals(
                0.009 * 22,
                Math.sqrt(yields.carcass()
                        .parts()
                        .get(1)
                        .allPieces()
                        .orElseThrow()
                        .spread()
                        .variance()),
                1e-12);
    }

    @Test
    void without_its_reading_a_carcass_has_no_yields() {
        assertEquals(List.of("measurement-missing"), slugs(Yields.of(tree).forCarcass(WEIGHT)));
        assertTrue(EstimatedTree.isNeeded(tree));
        assertFalse(EstimatedTree.isNeeded(
                EstimatedTree.of(tree, fat("7.5", Unit.MILLIMETRE)).orElseThrow()));
    }

    @Test
    void a_weight_is_one_by_all_its_names_and_never_one_on_another_basis() {
        Measurements given = Measurements.NONE.weighed(Basis.WARM, Quantity.of("22", Unit.KILOGRAM));
        assertTrue(given.reading(name("hot carcass weight")).isPresent());
        assertTrue(given.reading(name("Warm Carcass")).isPresent());
        assertTrue(given.reading(name("cold weight")).isEmpty());
    }
}
