package dev.gambrel.yields.conformance;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.Landmark;
import dev.gambrel.yields.conformance.clause.Clause;
import dev.gambrel.yields.conformance.clause.Stated;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Where a cut is made, against where the house makes it. */
class PartingJudgeTest {
    private static final Landmark HEAD = new Landmark.At(TradeName.of("the elbow joint"));
    private static final Landmark TAIL = new Landmark.At(TradeName.of("the stifle joint"));
    private static final Landmark EIGHT = new Landmark.Ribs(6, 13);
    private static final Landmark SEVEN = new Landmark.Ribs(7, 13);

    private static Stated parted(Landmark landmark) {
        return new Stated(new Clause.Parted(landmark), new Place.InTree(TreePath.ROOT, Aspect.SEPARATION));
    }

    private static Verdict verdict(Landmark asked, Landmark... held) {
        List<Stated> own = Stream.of(held).map(PartingJudgeTest::parted).toList();
        Offer offer = new Offer(
                0,
                new Product(Product.Kind.CUT, TreePath.ROOT.then(TradeName.of("leg"))),
                Names.only(TradeName.of("leg")),
                own,
                null);
        return new PartingJudge(offer).answer(parted(asked), asked).verdict();
    }

    @Test
    void the_same_place_meets_whatever_else_is_told() {
        assertEquals(Verdict.MEETS, verdict(HEAD, TAIL, HEAD));
        assertEquals(Verdict.MEETS, verdict(EIGHT, EIGHT));
    }

    @Test
    void other_ribs_fail() {
        assertEquals(Verdict.FAILS, verdict(EIGHT, SEVEN));
    }

    @Test
    void other_words_for_a_place_settle_nothing_and_nor_does_silence() {
        assertEquals(Verdict.NOT_STATED, verdict(HEAD, TAIL));
        assertEquals(Verdict.NOT_STATED, verdict(HEAD));
    }
}
