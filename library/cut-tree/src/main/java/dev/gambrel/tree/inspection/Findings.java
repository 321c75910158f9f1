package dev.gambrel.tree.inspection;

import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.quantity.Expected;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.text.NearestName;
import dev.gambrel.text.TradeName;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Collection;
import java.util.stream.Collectors;

/** Turns of phrase that several rules share. */
public final class Findings {
    private Findings() {}

    /** Adds the nearest known name, or else all of them if they are few. */
    public static Diagnostic suggest(Diagnostic finding, TradeName wanted, Collection<TradeName> known) {
        return suggest(finding, wanted, known, known);
    }

    /** Adds the nearest known name, or else what there is, by its first names alone, if that is little. */
    public static Diagnostic suggest(
            Diagnostic finding, TradeName wanted, Collection<TradeName> known, Collection<TradeName> firstNames) {
        return NearestName.of(wanted, known)
                .map(near -> finding.help("Did you mean “" + near + "”?"))
                .orElseGet(() -> firstNames.isEmpty() || firstNames.size() > 40
                        ? finding
                        : finding.note("Known: " + list(firstNames) + "."));
    }

    /** As {@link #suggest(Diagnostic, TradeName, Collection)}, and with what line the wanted name would be declared. */
    public static Diagnostic suggestOrDeclare(
            Diagnostic finding, TradeName wanted, Collection<TradeName> known, String line) {
        Diagnostic suggested = suggest(finding, wanted, known);
        return suggested.help((suggested.help().isEmpty() ? "Declare it: " : "Or declare it: ") + line);
    }

    /** A worked-out figure in a sentence or a column, without its unit. */
    public static String figure(BigDecimal amount) {
        String shown = Quantity.rounded(amount, Unit.PERCENT).toString();
        return shown.substring(0, shown.length() - 2);
    }

    /** The mean in the unit that it is written in. */
    public static Quantity meanAsWritten(Expected expected) {
        if (expected instanceof Expected.Mean mean) {
            return mean.value();
        } else if (expected instanceof Expected.PlusMinus spread) {
            return spread.value();
        }
        Expected.CentralRange range = (Expected.CentralRange) expected;
        BigDecimal perUnit = range.low().unit().factor();
        return Quantity.rounded(
                range.exactMean().divide(perUnit, MathContext.DECIMAL64),
                range.low().unit());
    }

    /** Names with commas, and an "and" before the last. */
    public static String list(Collection<TradeName> names) {
        String all = names.stream().map(TradeName::text).collect(Collectors.joining(", "));
        int last = all.lastIndexOf(", ");
        return last < 0 ? all : all.substring(0, last) + " and " + all.substring(last + 2);
    }
}
