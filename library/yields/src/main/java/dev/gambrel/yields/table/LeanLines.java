package dev.gambrel.yields.table;

import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.tree.Home;
import dev.gambrel.tree.SourceLean;
import dev.gambrel.tree.Stream;
import dev.gambrel.tree.term.Judged;
import dev.gambrel.yields.ExpectedYields;
import dev.gambrel.yields.figure.Spread;
import dev.gambrel.yields.lean.StreamLean;
import dev.gambrel.yields.lean.StreamLeans;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.Collectors;

/** How lean each stream comes out beside what it is meant to be, where the specification says how lean its sources are. */
final class LeanLines {
    private static final String NOT_STATED = Line.NOT_STATED;

    private LeanLines() {}

    static boolean areSaid(ExpectedYields yields) {
        return yields.rows().stream()
                .anyMatch(row -> row.home().stream()
                        .anyMatch(home -> home instanceof Home.ToStream to && to.lean() instanceof SourceLean.Stated));
    }

    static void print(String heading, ExpectedYields yields, StringBuilder out) {
        List<StreamLean> streams = StreamLeans.of(yields).stream()
                .filter(each -> each.found() instanceof StreamLean.Found.Known
                        || each.stream().lean() instanceof Stream.Lean.Stated)
                .toList();
        TextGrid grid = new TextGrid();
        grid.add(heading, "meant to be", "comes out, %", "± points", "95 % range", "");
        for (StreamLean each : streams) {
            if (each.found() instanceof StreamLean.Found.Known known) {
                add(grid, each, known);
            } else {
                grid.add(
                        "stream " + each.stream().name(), meant(each.stream()), NOT_STATED, NOT_STATED, NOT_STATED, "");
            }
        }
        grid.print(out);
        streams.forEach(each -> addWhatIsMissing(each, out));
    }

    private static void add(TextGrid grid, StreamLean each, StreamLean.Found.Known known) {
        Spread spread = known.lean().percent().spread();
        grid.add(
                "stream " + each.stream().name(),
                meant(each.stream()),
                figure(known.lean().percent().mean()) + judged(each, known),
                spread instanceof Spread.Stated s ? figure(s.standardDeviation()) : NOT_STATED,
                known.range95()
                        .map(range -> figure(range.low()) + " to " + figure(range.high()))
                        .orElse(NOT_STATED),
                words(each.against()));
    }

    private static String judged(StreamLean each, StreamLean.Found.Known known) {
        boolean said = each.stream().lean() instanceof Stream.Lean.Stated;
        return said || known.judged() == Judged.NOT_STATED
                ? ""
                : " " + known.judged().words();
    }

    private static String meant(Stream stream) {
        return stream.lean() instanceof Stream.Lean.Stated lean
                ? (lean.percent() + " " + lean.judged().words()).strip()
                : NOT_STATED;
    }

    private static String words(StreamLean.Against against) {
        return switch (against) {
            case LEANER -> "leaner than meant";
            case FATTER -> "fatter than meant";
            case WITHIN -> "as meant";
            case JUDGED_APART -> "not judged alike";
            case CANNOT_SAY -> "";
        };
    }

    private static void addWhatIsMissing(StreamLean each, StringBuilder out) {
        if (each.found() instanceof StreamLean.Found.NotStated missing) {
            String what = missing.lean().isEmpty() ? "share" : "lean";
            List<TreePath> of = missing.lean().isEmpty() ? missing.weight() : missing.lean();
            out.append("No ")
                    .append(what)
                    .append(" is stated of ")
                    .append(of.stream().map(TreePath::toString).collect(Collectors.joining(", ")))
                    .append(": how lean ")
                    .append(each.stream().name())
                    .append(" comes out is not known.\n");
        }
    }

    private static String figure(double percent) {
        return BigDecimal.valueOf(percent)
                .setScale(Figures.PERCENT_DECIMALS, RoundingMode.HALF_EVEN)
                .toPlainString();
    }
}
