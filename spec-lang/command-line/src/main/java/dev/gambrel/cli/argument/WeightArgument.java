package dev.gambrel.cli.argument;

import dev.gambrel.cli.verb.WrongUsage;
import dev.gambrel.quantity.Dimension;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.tree.Basis;
import dev.gambrel.yields.CarcassWeight;
import java.math.BigDecimal;
import java.util.Optional;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;

/** A carcass weight on the command line: "22.4 kg warm", "47 lb 6 oz". It must say its basis: none is guessed. */
public final class WeightArgument {
    private static final String NAME = "--weight";
    private static final BigDecimal OUNCES_IN_A_POUND = BigDecimal.valueOf(16);

    private final String written;
    private int at;

    private WeightArgument(String written) {
        this.written = written;
    }

    /**
     * Takes the carcass weight.
     *
     * @param description what the help says of it
     * @return the option
     */
    public static OptionSpec option(String description) {
        return option(NAME, description);
    }

    /**
     * Takes a carcass weight under another name.
     *
     * @param name the option's name
     * @param description what the help says of it
     * @return the option
     */
    public static OptionSpec option(String name, String description) {
        return OptionSpec.builder(name)
                .paramLabel("WEIGHT")
                .type(String.class)
                .description(description)
                .build();
    }

    /**
     * The carcass weight that was given.
     *
     * @param parsed what stands on the command line
     * @return the weight with its basis; empty if none was given
     * @throws WrongUsage if it cannot be read or does not say its basis
     */
    public static Optional<CarcassWeight> weight(ParseResult parsed) {
        return weight(NAME, parsed);
    }

    /**
     * The carcass weight that was given under another name.
     *
     * @param name the option's name
     * @param parsed what stands on the command line
     * @return the weight with its basis; empty if none was given
     * @throws WrongUsage if it cannot be read or does not say its basis
     */
    public static Optional<CarcassWeight> weight(String name, ParseResult parsed) {
        return parsed.hasMatchedOption(name)
                ? Optional.of(
                        new WeightArgument(parsed.matchedOptionValue(name, "").strip()).weight())
                : Optional.empty();
    }

    private CarcassWeight weight() {
        Quantity mass = quantity();
        if (mass.unit() == Unit.POUND && at < written.length() && Character.isDigit(written.charAt(at))) {
            mass = together(mass, quantity());
        }
        String rest = written.substring(at);
        if (rest.isEmpty()) {
            throw new WrongUsage("“" + written + "” does not say what was weighed: write live, in skin, warm or cold"
                    + " after it, such as \"" + mass + " cold\".");
        }
        return new CarcassWeight(mass, Basis.of(rest).orElseThrow(this::wrong));
    }

    private Quantity together(Quantity pounds, Quantity ounces) {
        BigDecimal amount = pounds.amount().add(ounces.amount().divide(OUNCES_IN_A_POUND));
        boolean right = ounces.unit() == Unit.OUNCE && ounces.amount().compareTo(OUNCES_IN_A_POUND) < 0;
        if (!right || !Quantity.isAcceptable(amount)) {
            throw wrong();
        }
        return new Quantity(amount, Unit.POUND);
    }

    private Quantity quantity() {
        String number = take(c -> c >= '0' && c <= '9' || c == '.');
        Unit unit = Unit.of(take(Character::isLetter))
                .filter(u -> u.dimension() == Dimension.WEIGHT)
                .orElseThrow(this::wrong);
        try {
            BigDecimal amount = new BigDecimal(number);
            if (number.length() <= Quantity.MAX_DIGITS) {
                return new Quantity(amount, unit);
            }
        } catch (NumberFormatException noNumber) {
            throw wrong();
        }
        throw wrong();
    }

    private String take(java.util.function.IntPredicate which) {
        int start = at;
        while (at < written.length() && which.test(written.charAt(at))) {
            at++;
        }
        String taken = written.substring(start, at);
        while (at < written.length() && written.charAt(at) == ' ') {
            at++;
        }
        return taken;
    }

    private WrongUsage wrong() {
        return new WrongUsage("“" + written + "” is not a carcass weight; write the figure with a point, its unit and"
                + " its basis, such as \"22.4 kg cold\" or \"47 lb 6 oz warm\".");
    }
}
