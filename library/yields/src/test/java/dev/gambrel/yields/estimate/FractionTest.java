package dev.gambrel.yields.estimate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.Scale;

class FractionTest {
    private static Fraction of(String decimal) {
        return Fraction.of(new BigDecimal(decimal));
    }

    @Example
    void an_inch_in_millimetres_and_back_is_an_inch() {
        Fraction perInch = of("25.4").inverse();
        assertEquals(of("1.25"), of("31.75").times(perInch));
        assertEquals(
                "2",
                of("4").times(perInch)
                        .times(of("31.75"))
                        .plus(of("-3"))
                        .decimal()
                        .toPlainString());
    }

    @Example
    void a_fraction_without_an_end_is_rounded_to_34_digits() {
        assertEquals(
                "0.3333333333333333333333333333333333",
                of("3").inverse().decimal().toPlainString());
    }

    @Example
    void decimals_are_left_off_towards_nothing() {
        assertEquals(of("2"), of("2.999").whole());
        assertEquals(of("-2"), of("-2.999").whole());
        assertEquals(of("3"), of("3.000").whole());
    }

    @Example
    void the_sign_stands_on_top() {
        assertEquals(of("-0.5"), of("-2").inverse());
        assertEquals(1, of("-2").inverse().bottom().signum());
    }

    @Example
    void thousands_of_digits_are_too_long() {
        assertFalse(of("1e-2000").isTooLong());
        assertTrue(of("1e-3000").isTooLong());
        assertTrue(of("1e3000").isTooLong());
    }

    @Property
    void sums_and_products_are_those_of_decimals(@ForAll @Scale(6) BigDecimal a, @ForAll @Scale(6) BigDecimal b) {
        assertEquals(Fraction.of(a.add(b)), Fraction.of(a).plus(Fraction.of(b)));
        assertEquals(Fraction.of(a.multiply(b)), Fraction.of(a).times(Fraction.of(b)));
        assertEquals(a.compareTo(b), Fraction.of(a).compareTo(Fraction.of(b)));
        assertEquals(Fraction.of(a), Fraction.of(a).negative().negative());
    }
}
