package dev.gambrel.json;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.gambrel.diagnostic.Result;
import dev.gambrel.limits.Limits;
import dev.gambrel.text.SourceText;
import dev.gambrel.tree.Cut;
import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.Share;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * A lamb in two saddles. Source of every figure: Fabrication of lamb carcasses, agricultural e-course, Indian
 * Agricultural Statistics Research Institute, ecoursesonline.iasri.res.in/mod/page/view.php?id=63732.
 */
class PublishedLambTest {
    private static final BigDecimal HUNDRED = new BigDecimal(100);

    private final CutTree lamb = Fixtures.read(Fixtures.lamb()).orElseThrow();

    private static List<Cut> cuts(List<?> parts) {
        return parts.stream().map(Cut.class::cast).toList();
    }

    private static BigDecimal share(Cut cut) {
        return ((Share.Stated) cut.share()).expected().exactMean();
    }

    private static BigDecimal ofCarcass(Cut cut) {
        return ((Share.Stated) cut.share()).others().get(0).expected().exactMean();
    }

    @Test
    void the_two_saddles_are_53_and_47_per_cent_of_the_carcass() {
        assertEquals(
                List.of(new BigDecimal(53), new BigDecimal(47)),
                cuts(lamb.parts()).stream().map(PublishedLambTest::share).toList());
    }

    @Test
    void the_parts_of_each_saddle_add_up_to_its_published_share_of_the_carcass() {
        for (Cut saddle : cuts(lamb.parts())) {
            Stream<BigDecimal> parts = cuts(saddle.parts()).stream().map(PublishedLambTest::ofCarcass);
            assertEquals(share(saddle), parts.reduce(BigDecimal.ZERO, BigDecimal::add));
        }
    }

    @Test
    void a_share_of_the_saddle_is_the_published_share_of_the_carcass_to_three_decimals() {
        for (Cut saddle : cuts(lamb.parts())) {
            for (Cut cut : cuts(saddle.parts())) {
                BigDecimal ofSaddle = ofCarcass(cut).multiply(HUNDRED).divide(share(saddle), 3, RoundingMode.HALF_UP);
                assertEquals(ofSaddle, share(cut), cut.name().text());
            }
        }
    }

    @Test
    void the_published_lamb_breaks_no_rule() {
        Result<CutTree> read = TreeJsonReader.read(new SourceText("lamb.json", Fixtures.lamb()), Limits.DEFAULT);
        assertEquals(lamb, read.orElseThrow());
    }
}
