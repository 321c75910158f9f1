package dev.gambrel.batches;

import dev.gambrel.batches.csv.Cells;
import dev.gambrel.batches.csv.Chunk;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.quantity.Dimension;
import dev.gambrel.quantity.Unit;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.Basis;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;

/** Reads the heading of a file of carcasses, in plain words: "cold weight (kg)", "fat class", "back fat (mm)". */
final class HeadingReader {
    private static final String SEPARATORS = ",;\t";
    /** What every other byte of UTF-16 is, and no text in UTF-8 holds. */
    private static final char NO_CHARACTER = 0;

    private static final String EXAMPLE = "Head it with the basis and the unit, such as: cold weight (kg)";

    private final Place place;
    private final BatchLimits limits;

    HeadingReader(String file, BatchLimits limits) {
        this.place = new Place.InFile(file);
        this.limits = limits;
    }

    Result<Heading> read(Chunk first, Basis wanted) {
        if (first.rows() == 0) {
            return failed(Diagnostic.of(BatchCode.NO_HEADING, place).help(EXAMPLE));
        }
        char separator = separator(new String(first.text(), 0, first.end(0)));
        Cells cells = new Cells(separator, limits.columns());
        boolean fits = cells.split(first.text(), 0, first.end(0)) && cells.count() <= limits.columns();
        if (first.isTooLong(0) || !fits) {
            return failed(Diagnostic.of(BatchCode.HEADING_UNREADABLE, place)
                    .with("characters", limits.rowCharacters())
                    .with("columns", limits.columns())
                    .help("Look whether the first row is the heading."));
        }
        if (new String(first.text(), 0, first.end(0)).indexOf(NO_CHARACTER) >= 0) {
            return failed(Diagnostic.of(BatchCode.CHARACTERS, place)
                    .with("column", "heading")
                    .help("Save the file as UTF-8."));
        }
        List<String> names = new ArrayList<>();
        List<List<Unit>> units = new ArrayList<>();
        for (int c = 0; c < cells.count(); c++) {
            String written = cells.string(c).strip();
            Optional<Unit> unit = unit(written);
            names.add(unit.isPresent() ? withoutUnit(written) : written);
            units.add(unit.stream().toList());
        }
        return weighed(separator, names, units, wanted);
    }

    /** The one that stands most often in the heading; of equals the comma. */
    private static char separator(String heading) {
        char best = ',';
        for (char each : SEPARATORS.toCharArray()) {
            if (count(heading, each) > count(heading, best)) {
                best = each;
            }
        }
        return best;
    }

    private static long count(String text, char wanted) {
        return text.chars().filter(c -> c == wanted).count();
    }

    /** What stands in brackets at the end, if it is a unit. */
    private static Optional<Unit> unit(String written) {
        int open = open(written);
        return open < 0
                ? Optional.empty()
                : Unit.of(written.substring(open + 1, written.length() - 1).strip());
    }

    private static String withoutUnit(String written) {
        return written.substring(0, open(written)).strip();
    }

    private static int open(String written) {
        if (written.endsWith(")")) {
            return written.lastIndexOf('(');
        }
        return written.endsWith("]") ? written.lastIndexOf('[') : -1;
    }

    private Result<Heading> weighed(char separator, List<String> names, List<List<Unit>> units, Basis wanted) {
        int[] weights = IntStream.range(0, names.size())
                .filter(c -> basis(names.get(c)).isPresent())
                .toArray();
        if (weights.length == 0) {
            return failed(Diagnostic.of(BatchCode.NO_WEIGHT, place)
                    .note("The columns are: " + String.join(", ", names) + ".")
                    .help(EXAMPLE));
        }
        int weight = IntStream.of(weights)
                .filter(c -> basis(names.get(c)).orElseThrow() == wanted)
                .findFirst()
                .orElse(weights[0]);
        Basis weighed = basis(names.get(weight)).orElseThrow();
        boolean isTwice = IntStream.of(weights)
                        .filter(c -> basis(names.get(c)).orElseThrow() == weighed)
                        .count()
                > 1;
        if (isTwice) {
            return failed(columnTwice(place, names.get(weight)));
        }
        for (Unit unit : units.get(weight)) {
            if (unit.dimension() != Dimension.WEIGHT) {
                return failed(unitDiffers(place, names.get(weight), unit, Dimension.WEIGHT));
            }
        }
        return Result.of(new Heading(separator, names, units, weight, weighed), List.of());
    }

    static Diagnostic columnTwice(Place place, Object column) {
        return Diagnostic.of(BatchCode.COLUMN_TWICE, place)
                .with("column", column)
                .help("Head one of the two with another name.");
    }

    static Diagnostic unitDiffers(Place place, String column, Unit unit, Dimension wanted) {
        return Diagnostic.of(BatchCode.COLUMN_UNIT, place)
                .with("column", column)
                .with("unit", unit.symbol())
                .with("wanted", wanted.words())
                .help("Look whether the unit stands over the right column; nothing is converted unasked.");
    }

    /** What was weighed, of "cold weight", "hot carcass weight", "carcass weight, cold". */
    private static Optional<Basis> basis(String name) {
        String key = " " + name.toLowerCase(Locale.ROOT).replace(',', ' ') + " ";
        return key.contains(" weight ")
                ? Basis.of(
                        key.replace(" carcass ", " ").replace(" weight ", " ").strip())
                : Optional.empty();
    }

    /** The one column of a name; nothing where there is none. */
    static List<Integer> columns(Heading heading, TradeName name) {
        return IntStream.range(0, heading.names().size())
                .filter(c -> isCalled(heading.names().get(c), name))
                .boxed()
                .toList();
    }

    private static boolean isCalled(String heading, TradeName name) {
        return TradeName.isAcceptable(heading) && TradeName.of(heading).equals(name);
    }

    private static Result<Heading> failed(Diagnostic finding) {
        return Result.failed(List.of(finding));
    }
}
