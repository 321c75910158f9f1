package dev.gambrel.conformance.corpus;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.batches.sheets.PriceCode;
import dev.gambrel.batches.sheets.PriceList;
import dev.gambrel.compiler.SpecCompiler;
import dev.gambrel.compiler.source.Sources;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.text.SourceText;
import dev.gambrel.yields.Yields;
import dev.gambrel.yields.plan.YieldPlan;
import dev.gambrel.yields.working.Working;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The pages about prices show lists: the one is faulted as the page says, the other is read. */
class PricePagesTest {
    private static final YieldPlan PLAN = Yields.of(
                    new SpecCompiler()
                            .compile(new SourceText("hogget.cuts", Sheets.hogget("""
                            cut leg, two per carcass, 33.0 % ± 0.9 % {
                              cut chump 15.0 % ± 0.6 % {
                                trim fat to at most 5 mm at any point 5.0 % ± 1.0 % -> mince
                              }
                              cut topside 45.0 % ± 1.0 % {
                                trim fat to at most 5 mm at any point 4.0 % ± 1.0 % -> mince
                              }
                              loss saw 0.5 % ± 0.1 %
                              rest -> mince
                            }
                            cut shoulder, two per carcass, 40.0 % ± 1.0 %
                            cut neck, one per carcass, 4.0 % ± 0.3 %
                            loss drip 0.5 % ± 0.1 %
                            rest -> mince
                            """)), Sources.none())
                            .orElseThrow()
                            .tree(),
                    Working.AS_WRITTEN)
            .forTypicalCarcass()
            .orElseThrow()
            .plan();

    private static Result<PriceList> read(PriceCode code, String heading) {
        String list = ExplainPage.of(code).example(heading);
        return PriceList.read(new SourceText("prices.csv", list), PLAN);
    }

    @ParameterizedTest
    @EnumSource
    void the_wrong_list_shows_the_finding_and_no_other(PriceCode code) {
        List<Diagnostic> found = read(code, "Wrong").diagnostics();
        assertEquals(code.id(), Corpus.codes(found), Corpus.report(found));
        Corpus.hold(Corpus.report(found), Corpus.folder("sheets").resolve(code.id() + ".expected"));
    }

    @ParameterizedTest
    @EnumSource
    void the_right_list_is_read(PriceCode code) {
        Result<PriceList> read = read(code, "Right");
        assertEquals("", Corpus.codes(read.diagnostics()), Corpus.report(read.diagnostics()));
        assertFalse(read.orElseThrow().prices().isEmpty());
    }

    @ParameterizedTest
    @EnumSource
    void the_words_at_fault_are_underlined(PriceCode code) {
        Place place = read(code, "Wrong").diagnostics().get(0).place();
        boolean isUnderlined = place instanceof Place.InText text && text.span().length() > 0;
        assertTrue(isUnderlined, code.id());
    }
}
