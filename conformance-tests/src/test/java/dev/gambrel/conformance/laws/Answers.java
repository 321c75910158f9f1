package dev.gambrel.conformance.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.compiler.Compilation;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Fix;
import dev.gambrel.diagnostic.Label;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.diagnostic.PlainReport;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.json.TreeJsonWriter;
import dev.gambrel.quantity.Unit;
import dev.gambrel.tree.CutTree;
import dev.gambrel.yields.ExpectedYields;
import dev.gambrel.yields.Yields;
import dev.gambrel.yields.table.YieldTable;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** What any answer must be, whatever was asked. */
final class Answers {
    private static final Pattern BLANK_TO_FILL = Pattern.compile("\\{[a-z]+}");
    private static final int DECIMALS = 3;

    private Answers() {}

    /** A tree, or an error; and each finding can be read and shown; and a tree can be worked with. */
    static void isAnswered(Result<Compilation> result, String asked) {
        assertEquals(result.value().isEmpty(), Result.hasError(result.diagnostics()));
        boolean hasBraces = BLANK_TO_FILL.matcher(asked).find();
        for (Diagnostic finding : result.diagnostics()) {
            sentences(finding).forEach(sentence -> assertFalse(sentence.isBlank(), finding.code()::id));
            assertTrue(
                    hasBraces
                            || sentences(finding)
                                    .noneMatch(s -> BLANK_TO_FILL.matcher(s).find()),
                    () -> finding.code().id() + " has a blank that is not filled: " + finding.message());
            places(finding).forEach(Answers::liesInItsText);
            assertTrue(new PlainReport(PlainReport.Paint.NONE).print(finding).endsWith("\n"));
        }
        result.value().ifPresent(compilation -> isUsable(compilation.tree()));
    }

    private static Stream<String> sentences(Diagnostic finding) {
        return Stream.of(
                        Stream.of(finding.message()),
                        finding.notes().stream(),
                        finding.help().stream(),
                        finding.related().stream().map(Label::words))
                .flatMap(sentences -> sentences);
    }

    private static Stream<Place> places(Diagnostic finding) {
        return Stream.of(
                        Stream.of(finding.place()),
                        finding.related().stream().map(Label::place),
                        finding.fixes().stream().map(Fix::place))
                .flatMap(places -> places);
    }

    private static void liesInItsText(Place place) {
        if (place instanceof Place.Written written) {
            liesInItsText(written.text());
        } else if (place instanceof Place.InText in) {
            assertTrue(in.span().end() <= in.text().text().length(), "the place lies in its text");
        }
    }

    /** A tree in which no error was found can be worked out, printed and sent. */
    static void isUsable(CutTree tree) {
        assertFalse(TreeJsonWriter.write(tree).isEmpty());
        Result<ExpectedYields> yields = Yields.of(tree).forTypicalCarcass();
        yields.value()
                .ifPresent(found -> assertFalse(
                        YieldTable.of(found, Unit.KILOGRAM, DECIMALS).text().isEmpty()));
        report(yields.diagnostics());
    }

    /** The table of a typical carcass, or why there is none. */
    static String table(CutTree tree) {
        Result<ExpectedYields> yields = Yields.of(tree).forTypicalCarcass();
        return yields.value()
                .map(found -> YieldTable.of(found, Unit.KILOGRAM, DECIMALS))
                .map(table -> table.text() + table.csv())
                .orElseGet(() -> report(yields.diagnostics()));
    }

    static String report(List<Diagnostic> findings) {
        return new PlainReport(PlainReport.Paint.NONE).print(findings, Integer.MAX_VALUE);
    }
}
