package dev.gambrel.compiler.restate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.compiler.Compilation;
import dev.gambrel.compiler.Compiled;
import dev.gambrel.compiler.source.Sources;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.limits.Limits;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.Source;
import java.math.BigDecimal;
import java.util.List;
import java.util.regex.Pattern;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** Whatever shares are found and however the sheet is written, only figures and what they rest on change. */
class ShareRestaterLaws {
    private static final Source TESTS =
            new Source(TradeName.of("cutting tests"), Source.Kind.MEASURED, "tests, invented for this law");
    private static final Pattern FIGURES = Pattern.compile(
            "[0-9.]+ *%( *(±|\\+/-) *[0-9.]+ *%)?|, ?source [a-z ]+|\r?\nsource cutting tests, measured \"[^\"]*\"");
    private static final String LEG = """
            source old book, memory "from memory"// asked

            cut leg,two per carcass,FIRST{ // both
            cut shank  SECOND,source old book,bone in
            //THIRD

              trim fat THIRD->mince
            loss saw 0.5 %
              rest   -> mince
            }
            rest -> mince// all""";

    /** How a sheet is written, and what is found. */
    record Sheet(String text, BigDecimal leg, BigDecimal shank, BigDecimal fat, BigDecimal spread) {
        List<RestatedCut> cuts() {
            RestatedShare.Spread points =
                    spread.signum() == 0 ? new RestatedShare.AsWritten() : new RestatedShare.Points(spread);
            TreePath leg = TreePath.ROOT.then(TradeName.of("leg"));
            return List.of(
                    new RestatedCut(TreePath.ROOT, List.of(new RestatedShare(leg, leg(), points)), TESTS),
                    new RestatedCut(
                            leg,
                            List.of(
                                    new RestatedShare(leg.then(TradeName.of("shank")), shank, points),
                                    new RestatedShare(leg.then(TradeName.of("fat")), fat, points)),
                            TESTS));
        }
    }

    @Provide
    Arbitrary<Sheet> sheets() {
        Arbitrary<String> figure = Arbitraries.of("33.0 %", "12 % ± 0.6 %", "7.25%+/-0.5%", "3.4 % ± 0.25 %");
        Arbitrary<String> text = Combinators.combine(figure, figure, figure, Arbitraries.of("\n", "\r\n"))
                .as((a, b, c, end) -> (Compiled.HEAD
                                + LEG.replace("FIRST", a).replace("SECOND", b).replace("THIRD", c))
                        .replace("\n", end));
        return Combinators.combine(text, share(10, 40), share(10, 30), share(5, 20), share(0, 1))
                .as(Sheet::new);
    }

    private static Arbitrary<BigDecimal> share(int least, int most) {
        return Arbitraries.bigDecimals()
                .between(BigDecimal.valueOf(least), BigDecimal.valueOf(most))
                .ofScale(1);
    }

    private static Result<Restatement> restate(String text, Sheet sheet) {
        Compilation compilation = Compiled.text(text).orElseThrow();
        return ShareRestater.restate(compilation, Sources.none(), Limits.DEFAULT, sheet.cuts());
    }

    private static String after(Restatement restated, String before) {
        return restated.texts().isEmpty()
                ? before
                : restated.texts().get(0).after().text();
    }

    @Property(tries = 300)
    void onlyFiguresAndSourcesChange(@ForAll("sheets") Sheet sheet) {
        String after = after(restate(sheet.text(), sheet).orElseThrow(), sheet.text());
        assertEquals(
                FIGURES.matcher(sheet.text()).replaceAll(""),
                FIGURES.matcher(after).replaceAll(""));
    }

    @Property(tries = 300)
    void whatIsStatedAlreadyChangesNothing(@ForAll("sheets") Sheet sheet) {
        String after = after(restate(sheet.text(), sheet).orElseThrow(), sheet.text());
        assertEquals(List.of(), restate(after, sheet).orElseThrow().texts());
    }

    @Property(tries = 300)
    void theDiffTakesTheOldTextToTheNew(@ForAll("sheets") Sheet sheet) {
        for (RestatedText text : restate(sheet.text(), sheet).orElseThrow().texts()) {
            assertEquals(
                    text.after().text(), Patch.apply(text.diff(), text.before().text()));
            assertTrue(text.diff().startsWith("--- hogget.cuts\n+++ hogget.cuts\n@@ -"), text.diff());
        }
    }
}
