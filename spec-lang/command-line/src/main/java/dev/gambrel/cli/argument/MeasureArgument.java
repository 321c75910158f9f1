package dev.gambrel.cli.argument;

import dev.gambrel.cli.verb.WrongUsage;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.text.TradeName;
import dev.gambrel.yields.estimate.Measurements;
import dev.gambrel.yields.estimate.Reading;
import java.math.BigDecimal;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;

/** What was measured, on the command line: "back fat = 12 mm", "muscling = thick". */
public final class MeasureArgument {
    private static final String NAME = "--measure";

    private MeasureArgument() {}

    /**
     * Takes a reading, once for each thing measured.
     *
     * @return the option
     */
    public static OptionSpec option() {
        return OptionSpec.builder(NAME)
                .paramLabel("READING")
                .type(String[].class)
                .description("What was measured, such as \"back fat = 12 mm\"; once for each measure.")
                .build();
    }

    /**
     * The readings that were given.
     *
     * @param parsed what stands on the command line
     * @return all of them; none if none was given
     * @throws WrongUsage if one cannot be read, or one thing is given twice
     */
    public static Measurements measurements(ParseResult parsed) {
        Measurements given = Measurements.NONE;
        for (String written : parsed.matchedOptionValue(NAME, new String[0])) {
            given = with(given, written);
        }
        return given;
    }

    private static Measurements with(Measurements given, String written) {
        int equals = written.indexOf('=');
        String name = written.substring(0, Math.max(0, equals)).strip();
        String reading = written.substring(equals + 1).strip();
        if (!TradeName.isAcceptable(name) || !TradeName.isAcceptable(reading)) {
            throw wrong(written);
        }
        if (given.reading(TradeName.of(name)).isPresent()) {
            throw new WrongUsage("“" + name + "” is given twice.");
        }
        return given.with(TradeName.of(name), reading(reading, written));
    }

    private static Reading reading(String reading, String written) {
        int end = 0;
        while (end < reading.length() && isOfANumber(reading.charAt(end))) {
            end++;
        }
        if (end == 0) {
            return new Reading.Score(TradeName.of(reading));
        }
        String symbol = reading.substring(end).strip();
        Unit unit = symbol.isEmpty() ? Unit.NUMBER : Unit.of(symbol).orElseThrow(() -> wrong(written));
        try {
            BigDecimal amount = new BigDecimal(reading.substring(0, end));
            if (end <= Quantity.MAX_DIGITS) {
                return new Reading.Figure(new Quantity(amount, unit));
            }
        } catch (NumberFormatException noNumber) {
            throw wrong(written);
        }
        throw wrong(written);
    }

    private static boolean isOfANumber(char c) {
        return c >= '0' && c <= '9' || c == '.' || c == '-';
    }

    private static WrongUsage wrong(String written) {
        return new WrongUsage(
                "“" + written + "” is not a reading; write the measure, an equals sign, and the figure with a"
                        + " point and its unit, such as \"back fat = 12.5 mm\", or the score, such as \"muscling = thick\".");
    }
}
