package dev.gambrel.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

class QuantityLaws {
    private static final List<Unit> WEIGHTS = Arrays.stream(Unit.values())
            .filter(unit -> unit.dimension() == Dimension.WEIGHT)
            .toList();

    @Provide
    Arbitrary<Quantity> weights() {
        return Combinators.combine(amounts(), Arbitraries.of(WEIGHTS)).as(Quantity::new);
    }

    @Provide
    Arbitrary<BigDecimal> amounts() {
        Arbitrary<Integer> powers =
                Arbitraries.integers().between(-Quantity.MAX_EXPONENT + 40, Quantity.MAX_EXPONENT - 40);
        return Combinators.combine(Arbitraries.bigDecimals().ofScale(4), powers)
                .as(BigDecimal::scaleByPowerOfTen)
                .filter(Quantity::isAcceptable);
    }

    @Property
    void comparison_is_an_order_whatever_the_units(
            @ForAll("weights") Quantity a, @ForAll("weights") Quantity b, @ForAll("weights") Quantity c) {
        assertEquals(Integer.signum(a.compareTo(b)), -Integer.signum(b.compareTo(a)));
        if (a.compareTo(b) <= 0 && b.compareTo(c) <= 0) {
            assertTrue(a.compareTo(c) <= 0);
        }
        assertEquals(0, a.compareTo(a));
    }

    @Property
    void a_weight_in_ounces_is_the_same_weight_in_pounds(@ForAll("amounts") BigDecimal pounds) {
        BigDecimal ounces = pounds.multiply(BigDecimal.valueOf(16));
        if (Quantity.isAcceptable(ounces)) {
            assertEquals(0, new Quantity(pounds, Unit.POUND).compareTo(new Quantity(ounces, Unit.OUNCE)));
        }
    }

    @Property
    void a_plainly_printed_amount_is_read_back_as_written(@ForAll("weights") Quantity weight) {
        String[] words = weight.toString().split(" ");
        assertEquals(0, new BigDecimal(words[0]).compareTo(weight.amount()));
        assertEquals(weight.unit(), Unit.of(words[1]).orElseThrow());
    }

    @Property
    void whatever_was_worked_out_can_be_shown(@ForAll BigDecimal amount, @ForAll("amounts") BigDecimal factor) {
        Quantity shown = Quantity.rounded(amount.multiply(factor), Unit.PERCENT);
        assertTrue(Quantity.isAcceptable(shown.amount()));
    }
}
