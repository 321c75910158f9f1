package dev.gambrel.cli.argument;

import dev.gambrel.cli.verb.WrongUsage;
import dev.gambrel.quantity.Dimension;
import dev.gambrel.quantity.Unit;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;

/** The unit of weight to print in, on the command line: {@code --unit lb}. */
public final class UnitArgument {
    private static final String NAME = "--unit";

    private UnitArgument() {}

    /**
     * Takes the unit.
     *
     * @return the option
     */
    public static OptionSpec option() {
        return OptionSpec.builder(NAME)
                .paramLabel("UNIT")
                .type(String.class)
                .description("The unit to print in: kg, g, lb or oz; kg if not said.")
                .build();
    }

    /**
     * The unit that was asked for.
     *
     * @param parsed what stands on the command line
     * @return a unit of weight; the kilogram if none was asked for
     * @throws WrongUsage if it is not a unit of weight
     */
    public static Unit unit(ParseResult parsed) {
        String word = parsed.matchedOptionValue(NAME, Unit.KILOGRAM.symbol());
        return Unit.of(word)
                .filter(unit -> unit.dimension() == Dimension.WEIGHT)
                .orElseThrow(() -> new WrongUsage(
                        "“" + word + "” is not a unit of weight; there are " + Dimension.WEIGHT.unitSymbols() + "."));
    }
}
