package dev.gambrel.cli.packs;

import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.FirstFindings;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.text.SourceText;
import dev.gambrel.text.Span;
import dev.gambrel.yields.packs.PackCode;
import dev.gambrel.yields.packs.Tare;
import dev.gambrel.yields.packs.WeighedPacks;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads the weights of packs: one a line, or several with a semicolon, or a comma and a blank, between. What follows two
 * slashes is left out.
 */
final class WrittenWeights {
    private static final Pattern BETWEEN = Pattern.compile(";|,(?=\\s|$)");
    private static final int LONGEST_SHOWN = 60;
    private static final BigDecimal HALF = new BigDecimal("0.5");
    private static final BigDecimal TWICE = new BigDecimal("2");
    private static final BigDecimal NEAR = new BigDecimal("0.1");

    private final SourceText text;
    private final Unit unitOfAll;
    private final Tare tare;
    private final Quantity nominal;
    private final List<Quantity> net = new ArrayList<>();
    private final FirstFindings findings = new FirstFindings();
    private final List<Diagnostic> firstFar = new ArrayList<>();
    private final List<Diagnostic> firstBare = new ArrayList<>();
    private int far;
    private int bare;

    private WrittenWeights(SourceText text, Unit unitOfAll, Tare tare, Quantity nominal) {
        this.text = text;
        this.unitOfAll = unitOfAll;
        this.tare = tare;
        this.nominal = nominal;
    }

    /** The net weights, with a warning where one can hardly be of such a pack. */
    static Result<WeighedPacks> read(SourceText text, Unit unitOfAll, Tare tare, Quantity nominal) {
        return new WrittenWeights(text, unitOfAll, tare, nominal).packs();
    }

    private Result<WeighedPacks> packs() {
        for (int line = 1; line <= text.lineCount(); line++) {
            readLine(text.line(line));
        }
        firstFar.forEach(first -> findings.accept(far == 1 ? first : first.note("Packs so far off: " + far + ".")));
        firstBare.forEach(
                first -> findings.accept(bare == 1 ? first : first.note("Weights without a unit: " + bare + ".")));
        List<Diagnostic> found = findings.list();
        if (Result.hasError(found)) {
            return Result.failed(found);
        }
        return net.isEmpty()
                ? Result.failed(List.of(Diagnostic.of(PackCode.NO_PACKS, new Place.InFile(text.name()))
                        .help("Write one weight a line, each with its unit, such as: 201.4 g")))
                : Result.of(new WeighedPacks(net), found);
    }

    private void readLine(Span line) {
        String written = text.slice(line);
        int end = written.contains("//") ? written.indexOf("//") : written.length();
        Matcher between = BETWEEN.matcher(written).region(0, end);
        int start = 0;
        while (between.find()) {
            readOne(line.start(), written, start, between.start());
            start = between.end();
        }
        readOne(line.start(), written, start, end);
    }

    private void readOne(int offset, String line, int from, int to) {
        int start = from;
        int end = to;
        while (start < end && Character.isWhitespace(line.charAt(start))) {
            start++;
        }
        while (end > start && Character.isWhitespace(line.charAt(end - 1))) {
            end--;
        }
        if (start < end) {
            weight(line.substring(start, end), new Place.InText(text, new Span(offset + start, offset + end)));
        }
    }

    private void weight(String written, Place place) {
        Optional<Quantity> gross = WrittenWeight.read(written, unitOfAll).filter(WeighedPacks::isAcceptable);
        if (gross.isEmpty() && unitOfAll == Unit.NUMBER && WrittenWeight.isBare(written)) {
            withoutUnit(written, place);
            return;
        }
        if (gross.isEmpty()) {
            findings.accept(Diagnostic.of(PackCode.NOT_A_WEIGHT, place)
                    .with("written", shortened(written))
                    .help(
                            "Write the figure with a point and its unit, such as 201.4 g; or say the unit of all with --unit.")
                    .help("Between weights on one line write a semicolon, or a comma and a blank."));
            return;
        }
        Optional<Quantity> left = tare.net(gross.get());
        if (left.isEmpty()) {
            findings.accept(Diagnostic.of(PackCode.NOTHING_IN_IT, place)
                    .with("weight", gross.get())
                    .with("tare", tare.weight())
                    .help("Look whether the figure and the tare are right, and whether it was weighed net already."));
            return;
        }
        net.add(left.get());
        if (isFar(left.get().common())) {
            far++;
        }
        if (far == 1 && firstFar.isEmpty()) {
            firstFar.add(tooFar(left.get(), place));
        }
    }

    /** A scale writes none, so the first speaks for all. */
    private void withoutUnit(String written, Place place) {
        bare++;
        if (bare == 1) {
            firstBare.add(Diagnostic.of(PackCode.NOT_A_WEIGHT, place)
                    .with("written", shortened(written))
                    .help("Say the unit of all, such as --unit g; or write it after each figure."));
        }
    }

    private Diagnostic tooFar(Quantity weight, Place place) {
        return Diagnostic.of(PackCode.FAR_FROM_NOMINAL, place)
                .with("weight", weight)
                .with("nominal", nominal)
                .with("question", question(weight.amount()))
                .help("Look whether the figure and its unit are right; it is judged as it stands.");
    }

    private static String shortened(String written) {
        return written.length() <= LONGEST_SHOWN ? written : written.substring(0, LONGEST_SHOWN) + "…";
    }

    private boolean isFar(BigDecimal kilograms) {
        BigDecimal wanted = nominal.common();
        return kilograms.compareTo(wanted.multiply(HALF)) < 0 || kilograms.compareTo(wanted.multiply(TWICE)) > 0;
    }

    private String question(BigDecimal amount) {
        BigDecimal wanted = nominal.common();
        for (Unit unit : List.of(Unit.GRAM, Unit.KILOGRAM, Unit.OUNCE, Unit.POUND)) {
            BigDecimal gap = unit.toCommon(amount).subtract(wanted).abs();
            if (gap.compareTo(wanted.multiply(NEAR)) <= 0) {
                return " Was it " + new Quantity(amount, unit) + "?";
            }
        }
        return "";
    }
}
