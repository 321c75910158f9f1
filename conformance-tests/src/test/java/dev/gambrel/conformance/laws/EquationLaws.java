package dev.gambrel.conformance.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.Carcass;
import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.estimate.Equation;
import dev.gambrel.tree.estimate.Expression;
import dev.gambrel.tree.estimate.Expression.Coefficient;
import dev.gambrel.tree.estimate.Expression.Inverse;
import dev.gambrel.tree.estimate.Expression.Named;
import dev.gambrel.tree.estimate.Expression.Negative;
import dev.gambrel.tree.estimate.Expression.Product;
import dev.gambrel.tree.estimate.Expression.Sum;
import dev.gambrel.tree.estimate.Measure;
import dev.gambrel.tree.estimate.Predictors;
import dev.gambrel.tree.estimate.Scale;
import dev.gambrel.tree.estimate.ValidRange;
import dev.gambrel.tree.rules.TreeRules;
import dev.gambrel.yields.estimate.Estimated;
import dev.gambrel.yields.estimate.Estimator;
import dev.gambrel.yields.estimate.MeasurementCode;
import dev.gambrel.yields.estimate.Measurements;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.function.Supplier;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;

/** Arithmetic with units, whatever the equation. */
class EquationLaws {
    private static final TradeName RESULT = TradeName.of("result");
    private static final List<Unit> UNITS = Arrays.stream(Unit.values())
            .filter(unit -> unit != Unit.CELSIUS && unit != Unit.FAHRENHEIT)
            .toList();

    @Provide
    Arbitrary<Expression> expressions() {
        return expressions(3);
    }

    private static Arbitrary<Expression> expressions(int deep) {
        Arbitrary<Quantity> figures = Combinators.combine(
                        Arbitraries.integers().between(-40, 40), Arbitraries.of(UNITS))
                .as((amount, unit) -> new Quantity(BigDecimal.valueOf(amount, 1), unit));
        Arbitrary<Unit> per = Arbitraries.of(Unit.MILLIMETRE, Unit.INCH, Unit.POUND, Unit.PERCENT, Unit.SQUARE_INCH);
        Arbitrary<Expression> coefficient =
                Combinators.combine(figures, per.list().ofMaxSize(1)).as(Coefficient::new);
        Arbitrary<Expression> leaf = Arbitraries.oneOf(
                coefficient,
                Arbitraries.of("fat", "eye area", "kidney fat", "warm weight")
                        .map(TradeName::of)
                        .map(Named::new));
        if (deep == 0) {
            return leaf;
        }
        Arbitrary<Expression> inner = expressions(deep - 1);
        return Arbitraries.oneOf(
                leaf,
                inner.list().ofMinSize(1).ofMaxSize(3).map(Sum::new),
                inner.map(one -> new Sum(List.of(one, new Negative(one)))),
                inner.list().ofMinSize(1).ofMaxSize(2).map(Product::new),
                Combinators.combine(inner, inner).as((top, bottom) -> new Product(List.of(top, new Inverse(bottom)))));
    }

    private static CutTree tree(Expression expression) {
        List<Measure> measures = List.of(
                measure("fat", Unit.MILLIMETRE),
                measure("eye area", Unit.SQUARE_CENTIMETRE),
                measure("kidney fat", Unit.PERCENT));
        Equation equation = new Equation(
                RESULT,
                expression,
                new Equation.Told.NotStated(),
                List.of(),
                List.of(),
                new Equation.Residual.NotStated(),
                List.of());
        CutTree house = HandMade.HOUSE;
        Carcass carcass = new Carcass(
                house.carcass().basis(),
                List.of(),
                house.carcass().band(),
                List.of(),
                List.of(),
                new Predictors(measures, List.of(equation)));
        return new CutTree(
                house.specification(), carcass, house.species(), List.of(), house.sources(), List.of(), List.of());
    }

    private static Measure measure(String name, Unit unit) {
        return new Measure(TradeName.of(name), new Scale.In(unit), "", new ValidRange.NotStated());
    }

    private static Measurements given(Quantity fat, Quantity area, Quantity kidneyFat, Quantity weight) {
        return Measurements.NONE
                .with(TradeName.of("fat"), fat)
                .with(TradeName.of("eye area"), area)
                .with(TradeName.of("kidney fat"), kidneyFat)
                .with(TradeName.of("hot carcass weight"), weight);
    }

    private static Measurements imperial(int hundredths) {
        return given(
                new Quantity(BigDecimal.valueOf(hundredths, 2), Unit.INCH),
                new Quantity(BigDecimal.valueOf(hundredths + 900L, 2), Unit.SQUARE_INCH),
                Quantity.of("2.5", Unit.PERCENT),
                new Quantity(BigDecimal.valueOf(hundredths + 600L), Unit.POUND));
    }

    private static Measurements metric(int hundredths) {
        return given(
                new Quantity(BigDecimal.valueOf(hundredths, 2).multiply(new BigDecimal("25.4")), Unit.MILLIMETRE),
                new Quantity(
                        BigDecimal.valueOf(hundredths + 900L, 2).multiply(new BigDecimal("6.4516")),
                        Unit.SQUARE_CENTIMETRE),
                Quantity.of("2.5", Unit.PERCENT),
                new Quantity(
                        BigDecimal.valueOf(hundredths + 600L).multiply(new BigDecimal("0.45359237")), Unit.KILOGRAM));
    }

    private static boolean isSound(CutTree tree) {
        return !Result.hasError(TreeRules.check(tree));
    }

    private static String told(Result<Estimated> result) {
        return result.value()
                .map(estimated -> estimated.value().toString())
                .orElseGet(() -> result.diagnostics().get(0).code().id());
    }

    @Example
    void a_sound_equation_is_let_through() {
        Expression fat = new Product(List.of(
                new Coefficient(Quantity.of("2.5", Unit.NUMBER), List.of(Unit.INCH)), new Named(TradeName.of("fat"))));
        assertEquals(
                List.of(),
                TreeRules.check(tree(fat)).stream().map(Diagnostic::message).toList());
        assertEquals("1", told(Estimator.of(tree(fat)).estimate(RESULT, metric(40))));
    }

    /** Inches and pounds are exact in millimetres and kilograms, and so is what is worked out from them. */
    @Property(tries = 1000)
    void readings_in_inches_and_pounds_give_what_those_in_millimetres_and_kilograms_give(
            @ForAll("expressions") Expression expression, @ForAll @IntRange(min = 1, max = 200) int hundredths) {
        CutTree tree = tree(expression);
        if (isSound(tree)) {
            Estimator estimator = Estimator.of(tree);
            assertEquals(
                    told(estimator.estimate(RESULT, imperial(hundredths))),
                    told(estimator.estimate(RESULT, metric(hundredths))));
        }
    }

    /** The rules judge from the units alone; the arithmetic meets the same units when it adds and tells. */
    @Property(tries = 1000)
    void the_rules_let_through_exactly_what_can_be_worked_out(@ForAll("expressions") Expression expression) {
        CutTree tree = tree(expression);
        Supplier<Result<Estimated>> worked = () -> Estimator.of(tree).estimate(RESULT, imperial(40));
        if (isSound(tree)) {
            Result<Estimated> result = worked.get();
            boolean byNothing = result.diagnostics().stream()
                    .anyMatch(finding -> finding.code() == MeasurementCode.DIVIDED_BY_NOTHING);
            assertTrue(result.value().isPresent() || byNothing);
        } else if (!dividesByNothing(tree)) {
            assertThrows(IllegalArgumentException.class, worked::get);
        }
    }

    /** What is divided by 0 ends before its units are met. */
    private static boolean dividesByNothing(CutTree tree) {
        boolean told = TreeRules.check(tree).stream()
                .anyMatch(finding -> finding.code().slug().equals("may-divide-by-nothing"));
        if (told) {
            return true;
        }
        try {
            return Estimator.of(tree).estimate(RESULT, imperial(40)).value().isEmpty();
        } catch (IllegalArgumentException unitsDiffer) {
            return false;
        }
    }
}
