package dev.gambrel.conformance.corpus;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.compiler.SpecCompiler;
import dev.gambrel.compiler.source.Sources;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.text.SourceText;
import dev.gambrel.text.TradeName;
import dev.gambrel.yields.ExpectedYields;
import dev.gambrel.yields.Yields;
import dev.gambrel.yields.table.YieldTable;
import dev.gambrel.yields.working.Order;
import dev.gambrel.yields.working.Working;
import dev.gambrel.yields.working.WorkingCode;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What a run asks for is done, or is told as expected. */
class WorkingCasesTest {
    private static final int DECIMALS = 3;

    private static final String SHEET = Sheets.hogget("""
            grade season, summer, winter
            stream diced, saleable
            cut leg, two per carcass, 33 % ± 0.9 % {
              cut topside 21 % ± 0.9 % {
                worked as steaks, as a rule {
                  portion steak 180 g, remainder -> diced
                }
                worked as whole joint {
                  trim fat to at most 5 mm at any point 3 % ± 1 % -> mince
                }
              }
              cut silverside 14 % ± 0.8 % {
                worked as heel on, when season is winter
                worked as heel off, when season is summer {
                  cut heel 20 % ± 2 % -> diced
                  rest -> mince
                }
              }
              cut trim end 5 % ± 0.5 % {
                worked as dice, as a rule -> diced
                worked as mince -> mince
              }
              rest -> mince
            }
            cut shoulder, two per carcass, 35 % ± 1 % {
              cut trim end 5 % ± 0.5 % {
                worked as dice, as a rule -> diced
                worked as mince -> mince
              }
              rest -> mince
            }
            rest -> mince
            """);

    private static final Working WINTER = Working.AS_WRITTEN.given(called("season"), called("winter"));

    /** What may be asked for. */
    enum Run {
        WINTER_AS_WRITTEN(WINTER),
        SUMMER_AS_WRITTEN(Working.AS_WRITTEN.given(called("season"), called("summer"))),
        ALL_WHOLE(WINTER.ordering(all("topside", "whole joint"))),
        HALF_WHOLE(WINTER.ordering(mix("topside", "steaks 50, whole joint 50"))),
        HEEL_ON_WHATEVER_THE_SEASON(Working.AS_WRITTEN.ordering(all("silverside", "heel on"))),
        TRIM_OF_THE_SHOULDER(WINTER.ordering(all("shoulder / trim end", "mince")));

        private final Working working;

        Run(Working working) {
            this.working = working;
        }
    }

    /** What may be wrong with what is asked for. */
    enum Slip {
        CUT_MISSPELT("G1131", WINTER.ordering(all("topsid", "steaks"))),
        CUT_WITHOUT_WAYS("G1131", WINTER.ordering(all("leg", "steaks"))),
        TRIM_OF_LEG_OR_SHOULDER("G1132", WINTER.ordering(all("trim end", "mince"))),
        WAY_MISSPELT("G1133", WINTER.ordering(all("topside", "stakes"))),
        NINE_TENTHS("G1134", WINTER.ordering(mix("topside", "steaks 50, whole joint 40"))),
        MORE_THAN_ALL_AND_LESS_THAN_NOTHING("G1134", WINTER.ordering(mix("topside", "steaks 150, whole joint -50"))),
        TWO_ORDERS_FOR_ONE_CUT(
                "G1135", WINTER.ordering(all("topside", "steaks")).ordering(all("leg / topside", "whole joint"))),
        ONE_WAY_TWICE("G1135", WINTER.ordering(mix("topside", "steaks 50, steaks 50"))),
        TWO_SEASONS("G1135", WINTER.given(called("season"), called("summer"))),
        NO_SEASON("G1136", Working.AS_WRITTEN),
        SEASON_MISSPELT("G1137", WINTER.given(called("saeson"), called("winter"))),
        WINTER_MISSPELT("G1138", Working.AS_WRITTEN.given(called("season"), called("wintre")));

        private final String code;
        private final Working working;

        Slip(String code, Working working) {
            this.code = code;
            this.working = working;
        }
    }

    @ParameterizedTest
    @EnumSource(Run.class)
    void what_is_asked_for_gives_the_expected_table(Run run) {
        Result<ExpectedYields> result = yields(run.working);
        String found = Corpus.report(result.diagnostics());
        assertTrue(result.value().isPresent(), found);
        hold(
                found
                        + YieldTable.of(result.orElseThrow(), Unit.KILOGRAM, DECIMALS)
                                .text(),
                run);
    }

    @ParameterizedTest
    @EnumSource(Slip.class)
    void what_cannot_be_done_is_told_as_expected(Slip slip) {
        List<Diagnostic> found = yields(slip.working).diagnostics();
        assertEquals(slip.code, Corpus.codes(found));
        hold(Corpus.report(found), slip);
    }

    @Test
    void every_finding_about_a_run_has_a_case() {
        Set<String> covered = new TreeSet<>();
        Arrays.stream(Slip.values()).forEach(slip -> covered.add(slip.code));
        Set<String> all = new TreeSet<>();
        Arrays.stream(WorkingCode.values()).forEach(code -> all.add(code.id()));
        assertEquals(all, covered);
    }

    private static Result<ExpectedYields> yields(Working working) {
        var text = new SourceText("hogget.cuts", SHEET);
        var tree =
                new SpecCompiler().compile(text, Sources.none()).orElseThrow().tree();
        return Yields.of(tree, working).forTypicalCarcass();
    }

    private static void hold(String text, Enum<?> which) {
        String file = which.name().toLowerCase(java.util.Locale.ROOT) + ".expected";
        Corpus.hold(text, Corpus.folder("workings").resolve(file));
    }

    private static TradeName called(String text) {
        return TradeName.of(text);
    }

    private static TreePath path(String text) {
        return new TreePath(Arrays.stream(text.split(" / ")).map(TradeName::of).toList());
    }

    private static Order all(String cut, String way) {
        return Order.all(path(cut), called(way));
    }

    private static Order mix(String cut, String ways) {
        return new Order(
                path(cut),
                Arrays.stream(ways.split(", "))
                        .map(way -> new Order.WayShare(
                                called(way.substring(0, way.lastIndexOf(' '))),
                                Quantity.of(way.substring(way.lastIndexOf(' ') + 1), Unit.PERCENT)))
                        .toList());
    }
}
