package dev.gambrel.yields;

import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.tree.Basis;
import dev.gambrel.tree.BasisStep;
import dev.gambrel.tree.Carcass;
import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.WeightBand;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/** Holds a carcass weight against what the specification says of its carcass. */
final class WeightCheck {
    private static final int PLACES = 4;
    private static final Place PLACE = new Place.InTree(TreePath.ROOT, Aspect.BAND);
    private static final Quantity LEAST = Quantity.of("1", Unit.GRAM);
    private static final Quantity MOST = Quantity.of("100000", Unit.KILOGRAM);
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    private WeightCheck() {}

    /** What is wrong with the number itself, if anything. */
    static List<Diagnostic> number(Quantity mass) {
        if (mass.amount().signum() <= 0) {
            return List.of(Diagnostic.of(YieldCode.CARCASS_WEIGHT_NOT_POSITIVE, PLACE)
                    .with("weight", brief(mass))
                    .help("Give the weight that the scale shows."));
        }
        if (mass.compareTo(LEAST) < 0 || mass.compareTo(MOST) > 0) {
            return List.of(Diagnostic.of(YieldCode.WEIGHT_OUT_OF_REACH, PLACE)
                    .with("weight", brief(mass))
                    .with("least", LEAST)
                    .with("most", MOST)
                    .help("Give the weight of one carcass, as the scale shows it."));
        }
        return List.of();
    }

    static Diagnostic requirement(CutTree tree) {
        return Diagnostic.of(YieldCode.REQUIREMENT_HAS_NO_YIELDS, new Place.InTree(TreePath.ROOT, Aspect.TITLE))
                .with("title", tree.specification().title())
                .help("Ask the house's specification for weights, and hold it against this one with: gambrel conform");
    }

    static Diagnostic basisDiffers(CarcassWeight weight, Basis wanted) {
        Basis given = weight.basis();
        Diagnostic found = Diagnostic.of(YieldCode.BASIS_DIFFERS, PLACE)
                .with("given", brief(weight.mass()) + " " + given.words())
                .with("wanted", wanted.words())
                .help("Give the weight " + wanted.words() + ".");
        return given.compareTo(wanted) < 0
                ? found.help("Or write a line that says what is lost: " + stepLine(given, wanted))
                : found;
    }

    private static String stepLine(Basis given, Basis wanted) {
        String from = "from " + given.words() + " to " + wanted.words();
        return given == Basis.WARM && wanted == Basis.COLD
                ? "`" + from + ", loss chill shrink 2 % ± 0.4 %`, with your own figures."
                : "`" + from + ", loss dressing`, and your own figure in %.";
    }

    static Diagnostic workedApart(CarcassWeight lightest, CarcassWeight heaviest) {
        return Diagnostic.of(YieldCode.WORKED_APART, PLACE)
                .with("lightest", lightest.mass())
                .with("heaviest", heaviest.mass())
                .help("Ask for carcasses of one weight at a time.");
    }

    static Diagnostic noBand() {
        return Diagnostic.of(YieldCode.NO_BAND, PLACE)
                .help("Give the weight of a carcass.")
                .help("Or write the band in the carcass declaration, for example: `carcass cold, 20 kg to 24 kg`.");
    }

    /** Whether a carcass is in the band, on the specification's basis. */
    static List<Diagnostic> band(CarcassWeight weight, Carcass carcass, List<BasisStep> chain) {
        List<Diagnostic> found = new ArrayList<>();
        if (carcass.band() instanceof WeightBand.Stated band) {
            Quantity onBasis = after(chain, weight.mass());
            if (!band.holds(onBasis)) {
                Diagnostic outside = Diagnostic.of(YieldCode.OUTSIDE_BAND, PLACE)
                        .with("weight", shown(weight.mass()))
                        .with("low", band.low())
                        .with("high", band.high())
                        .with("question", question(weight.mass(), band, chain));
                found.add(chain.isEmpty() ? outside : outside.note(basisNote(weight, carcass, onBasis)));
            }
        }
        return found;
    }

    private static String basisNote(CarcassWeight weight, Carcass carcass, Quantity onBasis) {
        return weight.mass() + " " + weight.basis().words() + " is expected to be " + rounded(onBasis, Unit.KILOGRAM)
                + " " + carcass.basis().words() + ".";
    }

    /** The expected weight after the steps, to 34 digits. */
    static Quantity after(List<BasisStep> chain, Quantity mass) {
        if (chain.isEmpty()) {
            return mass;
        }
        BigDecimal kilograms = mass.common();
        for (BasisStep step : chain) {
            kilograms = kilograms
                    .multiply(HUNDRED.subtract(step.share().exactMean()))
                    .divide(HUNDRED);
        }
        return new Quantity(kilograms.round(MathContext.DECIMAL128), Unit.KILOGRAM);
    }

    /** Pounds taken for kilograms, or the other way round. */
    private static String question(Quantity mass, WeightBand.Stated band, List<BasisStep> chain) {
        Unit other = mass.unit() == Unit.POUND ? Unit.KILOGRAM : Unit.POUND;
        Quantity same = new Quantity(mass.amount(), other);
        boolean askable = mass.unit() == Unit.POUND || mass.unit() == Unit.KILOGRAM;
        if (!askable || !band.holds(after(chain, same))) {
            return "";
        }
        String plural = other == Unit.POUND ? "pounds" : "kilograms";
        return " Were these " + plural + "? " + same + " is " + rounded(same, mass.unit()) + ", inside the band; "
                + mass + " is " + rounded(mass, other) + ". Nothing was converted.";
    }

    private static Quantity rounded(Quantity quantity, Unit unit) {
        return new Quantity(quantity.common().divide(unit.factor(), PLACES, RoundingMode.HALF_EVEN), unit);
    }

    /** Pounds made kilograms have more digits than any scale. */
    private static Quantity shown(Quantity mass) {
        return mass.amount().scale() > PLACES ? rounded(mass, mass.unit()) : mass;
    }

    private static String brief(Quantity mass) {
        boolean readable =
                mass.amount().precision() <= 12 && Math.abs(mass.amount().scale()) <= 12;
        return readable
                ? mass.toString()
                : mass.amount().round(new MathContext(6)) + " " + mass.unit().symbol();
    }
}
