package dev.gambrel.yields;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.gambrel.tree.Basis;
import dev.gambrel.tree.BasisStep;
import dev.gambrel.tree.Carcass;
import dev.gambrel.tree.WeightBand;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

class BasisChainsTest {
    private static BasisStep step(Basis from, Basis to, String loss) {
        return new BasisStep(from, to, Sheet.name(loss), Sheet.expected("2"));
    }

    private static Map<Basis, List<BasisStep>> chains(BasisStep... steps) {
        return BasisChains.of(new Carcass(Basis.COLD, List.of(), new WeightBand.NotStated(), List.of(steps)));
    }

    @Test
    void the_specification_s_own_basis_needs_no_step() {
        assertEquals(Map.of(Basis.COLD, List.of()), chains());
    }

    @Test
    void steps_join_into_a_chain_in_whatever_order_they_are_written() {
        BasisStep dressing = step(Basis.LIVE, Basis.WARM, "dressing");
        BasisStep chill = step(Basis.WARM, Basis.COLD, "chill shrink");
        assertEquals(List.of(dressing, chill), chains(chill, dressing).get(Basis.LIVE));
        assertEquals(List.of(dressing, chill), chains(dressing, chill).get(Basis.LIVE));
    }

    @Test
    void the_shortest_chain_is_taken_and_of_equals_the_one_written_first() {
        BasisStep dressing = step(Basis.LIVE, Basis.WARM, "dressing");
        BasisStep chill = step(Basis.WARM, Basis.COLD, "chill shrink");
        BasisStep both = step(Basis.LIVE, Basis.COLD, "dressing and chill");
        BasisStep again = step(Basis.LIVE, Basis.COLD, "the same again");
        assertEquals(List.of(both), chains(dressing, chill, both, again).get(Basis.LIVE));
    }

    @Test
    void steps_that_lead_elsewhere_or_round_in_a_ring_lead_nowhere() {
        BasisStep there = step(Basis.LIVE, Basis.IN_SKIN, "one");
        BasisStep back = step(Basis.IN_SKIN, Basis.LIVE, "other");
        assertEquals(Set.of(Basis.COLD), chains(there, back).keySet());
    }
}
