package dev.gambrel.cli.packs;

import dev.gambrel.quantity.Dimension;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A weight as somebody wrote it: "201.4 g". A bare number has the unit that was said for all, if any was. */
final class WrittenWeight {
    private static final Pattern FORM = Pattern.compile("([0-9]+(?:\\.[0-9]+)?|\\.[0-9]+) *(\\p{L}*)");

    private WrittenWeight() {}

    /** Whether it is a figure without a unit. */
    static boolean isBare(String written) {
        Matcher form = FORM.matcher(written);
        return form.matches() && form.group(2).isEmpty();
    }

    /** The weight, or nothing where it is none; {@link Unit#NUMBER} where no unit was said for all. */
    static Optional<Quantity> read(String written, Unit unitOfAll) {
        Matcher form = FORM.matcher(written);
        if (!form.matches() || form.group(1).length() > Quantity.MAX_DIGITS) {
            return Optional.empty();
        }
        Optional<Unit> unit = form.group(2).isEmpty() ? Optional.of(unitOfAll) : Unit.of(form.group(2));
        return unit.filter(known -> known.dimension() == Dimension.WEIGHT)
                .map(known -> new Quantity(new BigDecimal(form.group(1)), known));
    }
}
