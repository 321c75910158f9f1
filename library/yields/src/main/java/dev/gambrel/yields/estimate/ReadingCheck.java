package dev.gambrel.yields.estimate;

import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.quantity.Dimension;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.text.NearestName;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.estimate.Measure;
import dev.gambrel.tree.estimate.Scale;
import dev.gambrel.tree.estimate.ValidRange;
import dev.gambrel.tree.inspection.Vocabulary;
import dev.gambrel.tree.inspection.Vocabulary.Meaning;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Whether what is needed was given, of the right kind and in its range. */
final class ReadingCheck {
    static final Place PLACE = new Place.InTree(TreePath.ROOT, Aspect.BAND);

    private ReadingCheck() {}

    /** What is wrong with the reading that an estimate needs under a name. */
    static List<Diagnostic> of(TradeName name, TradeName estimate, Vocabulary vocabulary, Measurements given) {
        Optional<Reading> reading = given.reading(name);
        return reading.isEmpty() ? List.of(missing(name, estimate, vocabulary)) : known(name, vocabulary, given);
    }

    private static Diagnostic missing(TradeName name, TradeName estimate, Vocabulary vocabulary) {
        Diagnostic finding = Diagnostic.of(MeasurementCode.MISSING, PLACE)
                .with("estimate", estimate)
                .with("measure", name);
        if (!(vocabulary.meaning(name).orElse(null) instanceof Meaning.Measured measured)) {
            return finding.help("Give it with its unit: " + name + " = 22.4 kg")
                    .note("A weight on another basis is never taken for it.");
        }
        Measure measure = measured.measure();
        return (measure.where().isEmpty() ? finding : finding.note(name + ": " + measure.where() + "."))
                .help("Give " + wanted(measure.scale()) + ": " + name + " = " + example(measure));
    }

    private static String example(Measure measure) {
        if (measure.scale() instanceof Scale.Scored scored) {
            return scored.scores().stream()
                    .findFirst()
                    .map(score -> score.word().text())
                    .orElse("");
        }
        return measure.range() instanceof ValidRange.Stated range
                ? range.low().toString()
                : new Quantity(BigDecimal.TEN, ((Scale.In) measure.scale()).unit()).toString();
    }

    /** What is wrong with a reading that was given under a name. */
    static List<Diagnostic> known(TradeName name, Vocabulary vocabulary, Measurements given) {
        Reading reading = given.reading(name).orElseThrow();
        Meaning meaning = vocabulary.meaning(name).orElse(null);
        if (meaning instanceof Meaning.Weighed) {
            return isFigure(reading, Dimension.WEIGHT)
                    ? positive(name, reading)
                    : List.of(wrongKind(name, reading, "a weight with its unit"));
        } else if (meaning instanceof Meaning.Measured measured) {
            return fits(reading, measured.measure().scale())
                    ? notNegative(measured.measure(), reading)
                    : List.of(wrongKind(name, reading, wanted(measured.measure().scale())));
        }
        return List.of(unknown(name, vocabulary));
    }

    private static Diagnostic unknown(TradeName name, Vocabulary vocabulary) {
        Diagnostic finding = Diagnostic.of(MeasurementCode.UNKNOWN, PLACE).with("measure", name);
        List<TradeName> known = vocabulary.names().stream()
                .filter(each -> vocabulary.meaning(each).orElse(null) instanceof Meaning.Measured)
                .toList();
        return NearestName.of(name, known)
                .map(near -> finding.help("Did you mean “" + near + "”?"))
                .orElseGet(() -> finding.help("Measured here: "
                        + known.stream().map(TradeName::text).collect(Collectors.joining(", ")) + "."));
    }

    private static boolean isFigure(Reading reading, Dimension dimension) {
        return reading instanceof Reading.Figure figure && figure.value().dimension() == dimension;
    }

    /** A score may be given by its word, or as a number between the lowest and the highest. */
    private static boolean fits(Reading reading, Scale scale) {
        if (scale instanceof Scale.Scored scored && reading instanceof Reading.Figure figure) {
            List<BigDecimal> numbers =
                    scored.scores().stream().map(Scale.Score::number).sorted().toList();
            BigDecimal number = figure.value().amount();
            return isFigure(reading, Dimension.NUMBER)
                    && !numbers.isEmpty()
                    && number.compareTo(numbers.get(0)) >= 0
                    && number.compareTo(numbers.get(numbers.size() - 1)) <= 0;
        } else if (reading instanceof Reading.Score score) {
            return scale instanceof Scale.Scored scored
                    && scored.score(score.word()).isPresent();
        }
        return isFigure(reading, scale.dimension());
    }

    private static List<Diagnostic> notNegative(Measure measure, Reading reading) {
        boolean mayBeNegative =
                switch (measure.scale().dimension()) {
                    case NUMBER, SHARE, TEMPERATURE -> true;
                    default -> false;
                };
        return mayBeNegative || ((Reading.Figure) reading).value().amount().signum() >= 0
                ? range(measure, reading)
                : List.of(wrongKind(
                        measure.name(), reading, measure.scale().dimension().words() + " from 0 up"));
    }

    private static List<Diagnostic> positive(TradeName name, Reading reading) {
        boolean positive = ((Reading.Figure) reading).value().amount().signum() > 0;
        return positive ? List.of() : List.of(wrongKind(name, reading, "a weight of more than nothing"));
    }

    private static Diagnostic wrongKind(TradeName name, Reading reading, String wanted) {
        return Diagnostic.of(MeasurementCode.WRONG_KIND, PLACE)
                .with("measure", name)
                .with("value", reading.words())
                .with("wanted", wanted)
                .help("Look whether the figure, its unit or the word is what was read; nothing is converted unasked.");
    }

    private static String wanted(Scale scale) {
        if (scale instanceof Scale.Scored scored) {
            return "one of "
                    + scored.scores().stream().map(score -> score.word().text()).collect(Collectors.joining(", "));
        }
        return scale.dimension() == Dimension.NUMBER
                ? "a plain number"
                : scale.dimension().words() + " with its unit";
    }

    private static List<Diagnostic> range(Measure measure, Reading reading) {
        return measure.range() instanceof ValidRange.Stated range
                        && reading instanceof Reading.Figure figure
                        && !range.holds(figure.value())
                ? List.of(outside(measure.name(), figure.value(), range, "the measure"))
                : List.of();
    }

    static Diagnostic outside(TradeName name, Quantity value, ValidRange.Stated range, String what) {
        return Diagnostic.of(MeasurementCode.OUTSIDE_RANGE, PLACE)
                .with("measure", name)
                .with("value", value)
                .with("low", range.low())
                .with("high", range.high())
                .with("what", what)
                .help("Measure again; if the figure stands, the estimate is a guess beyond what it was made from.");
    }
}
