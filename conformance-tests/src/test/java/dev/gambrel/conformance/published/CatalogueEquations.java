package dev.gambrel.conformance.published;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.gambrel.compiler.SpecCompiler;
import dev.gambrel.compiler.source.Sources;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.text.SourceText;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.CutTree;
import dev.gambrel.yields.estimate.Estimated;
import dev.gambrel.yields.estimate.Estimator;
import dev.gambrel.yields.estimate.Measurements;
import dev.gambrel.yields.estimate.Reading;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;

/**
 * One collection of published equations of the catalogue, asked with readings as a person writes them, and again with the
 * same readings in the other system of units.
 *
 * @param tree a specification that takes the collection in
 */
record CatalogueEquations(CutTree tree) {
    static CatalogueEquations of(String collection) {
        return new CatalogueEquations(compile("use \"catalogue:" + collection + "\"\n"));
    }

    static CutTree compile(String lines) {
        String text =
                "language 1\n" + lines + "species animal {\n}\nspecification \"Equations\" revision 1 for animal\n"
                        + "carcass warm\nstream mince, saleable\nrest -> mince\n";
        Result<?> result = new SpecCompiler().compile(new SourceText("equations.cuts", text), Sources.none());
        assertEquals(
                List.of(),
                result.diagnostics().stream().map(Diagnostic::message).toList());
        return new SpecCompiler()
                .compile(new SourceText("equations.cuts", text), Sources.none())
                .orElseThrow()
                .tree();
    }

    /** Exactly what the equation gives, for readings such as "fat thickness 0.40 in", in both systems of units. */
    BigDecimal exact(String estimate, String... readings) {
        BigDecimal asWritten = value(estimate, measurements(false, readings));
        BigDecimal inTheOtherSystem = value(estimate, measurements(true, readings));
        assertEquals(asWritten, inTheOtherSystem, estimate + " is the same in inches and in millimetres");
        return asWritten;
    }

    /** To the places of a printed figure. */
    String printed(String like, String estimate, String... readings) {
        int places = new BigDecimal(like).scale();
        return exact(estimate, readings).setScale(places, RoundingMode.HALF_UP).toPlainString();
    }

    /** Every warning and error for some readings. */
    List<String> slugs(String estimate, String... readings) {
        return Estimator.of(tree).estimate(TradeName.of(estimate), measurements(false, readings)).diagnostics().stream()
                .map(finding -> finding.code().slug())
                .toList();
    }

    private BigDecimal value(String estimate, Measurements given) {
        Estimated estimated =
                Estimator.of(tree).estimate(TradeName.of(estimate), given).orElseThrow();
        return estimated.value().amount();
    }

    static Measurements measurements(boolean converted, String... readings) {
        Measurements given = Measurements.NONE;
        for (String reading : readings) {
            int equals = reading.indexOf('=');
            TradeName name = TradeName.of(reading.substring(0, equals));
            given = given.with(name, reading(reading.substring(equals + 1).strip(), converted));
        }
        return given;
    }

    private static Reading reading(String written, boolean converted) {
        if (!Character.isDigit(written.charAt(0))) {
            return new Reading.Score(TradeName.of(written));
        }
        String[] words = written.split(" ");
        Unit unit = Unit.of(words[1]).orElseThrow();
        Quantity value = Quantity.of(words[0], unit);
        return new Reading.Figure(converted ? new Quantity(inOther(value), other(unit)) : value);
    }

    private static Unit other(Unit unit) {
        return switch (unit) {
            case INCH -> Unit.MILLIMETRE;
            case MILLIMETRE -> Unit.CENTIMETRE;
            case SQUARE_INCH -> Unit.SQUARE_CENTIMETRE;
            case POUND -> Unit.KILOGRAM;
            case KILOGRAM -> Unit.GRAM;
            default -> unit;
        };
    }

    /** Exact: a metric unit holds any number of inches or pounds as a decimal that ends. */
    private static BigDecimal inOther(Quantity value) {
        return value.common().divide(other(value.unit()).factor(), MathContext.UNLIMITED);
    }
}
