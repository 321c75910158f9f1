package dev.gambrel.yields.houseshares;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.gambrel.yields.figure.Spread;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class ProposalTest {
    private static ExpectedShares expected(double[] shares, double... deviations) {
        List<ExpectedShare> parts = new ArrayList<>();
        for (int i = 0; i < shares.length; i++) {
            parts.add(new ExpectedShare(
                    Legs.parts(shares.length).get(i), shares[i], new Spread.Stated(deviations[i]), Spread.NOT_STATED));
        }
        return new ExpectedShares(parts, 5);
    }

    @Test
    void thirds_are_rounded_so_that_they_add_up() {
        Proposal proposal = expected(new double[] {1 / 3.0, 1 / 3.0, 1 / 3.0}, 0.01, 0.01, 0.01)
                .proposal(1);
        assertEquals(
                List.of("33.4", "33.3", "33.3"),
                proposal.lines().stream()
                        .map(line -> line.percent().toPlainString())
                        .toList());
        assertEquals(
                new ProposedShare(
                        Legs.parts(3).get(0),
                        new BigDecimal("33.4"),
                        new ProposedShare.AsFound(new BigDecimal("1.0")),
                        5),
                proposal.lines().get(0));
    }

    @Test
    void a_spread_that_rounding_left_too_large_is_lessened_and_said() {
        Proposal proposal =
                expected(new double[] {0.5, 0.3, 0.2}, 0.0026, 0.0014, 0.00144).proposal(1);
        assertEquals(
                List.of(
                        new ProposedShare.Lessened(new BigDecimal("0.2"), new BigDecimal("0.3")),
                        new ProposedShare.AsFound(new BigDecimal("0.1")),
                        new ProposedShare.AsFound(new BigDecimal("0.1"))),
                proposal.lines().stream().map(ProposedShare::spread).toList());
    }

    @Test
    void a_proposal_has_a_number_of_decimals_that_people_read() {
        ExpectedShares halves = expected(new double[] {0.5, 0.5}, 0.01, 0.01);
        assertEquals("50", halves.proposal(0).lines().get(0).percent().toPlainString());
        assertThrows(IllegalArgumentException.class, () -> halves.proposal(-1));
        assertThrows(IllegalArgumentException.class, () -> halves.proposal(7));
        assertThrows(IllegalArgumentException.class, () -> expected(new double[] {0.5, 0.4}, 0.01, 0.01));
    }
}
