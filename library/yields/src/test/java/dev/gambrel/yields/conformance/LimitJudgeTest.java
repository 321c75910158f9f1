package dev.gambrel.yields.conformance;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.tree.portion.Limit;
import dev.gambrel.tree.portion.Outside;
import dev.gambrel.yields.conformance.clause.Clause;
import dev.gambrel.yields.conformance.clause.Clause.How;
import dev.gambrel.yields.conformance.clause.Quality;
import dev.gambrel.yields.conformance.clause.Stated;
import org.junit.jupiter.api.Test;

/** A limit against a limit. */
class LimitJudgeTest {
    private static Quantity grams(String amount) {
        return Quantity.of(amount, Unit.GRAM);
    }

    private static Stated stated(Quality quality, Limit limit, Outside outside, How how) {
        return new Stated(
                new Clause.Limited(quality, limit, outside, how), new Place.InTree(TreePath.ROOT, Aspect.SUPPLY));
    }

    private static Stated weight(Limit limit) {
        return stated(Quality.WEIGHT, limit, new Outside.None(), How.NOT_SAID);
    }

    private static Limit between(String low, String high) {
        return new Limit.Between(grams(low), grams(high));
    }

    private static void answered(ConformanceCode code, Verdict verdict, Answer answer) {
        assertEquals(code, answer.reason().code());
        assertEquals(verdict, answer.verdict());
    }

    @Test
    void a_limit_within_what_is_asked_is_met_by_the_nearer_end() {
        Answer answer = LimitJudge.judge(weight(between("160", "180")), weight(between("165", "178")));
        answered(ConformanceCode.CLAUSE_MET, Verdict.MEETS, answer);
        assertEquals(new Margin.At(Margin.End.HIGH, grams("2")), answer.margin());
    }

    @Test
    void the_end_that_is_passed_most_tells_the_margin() {
        Answer answer = LimitJudge.judge(weight(between("160", "180")), weight(between("155", "190")));
        answered(ConformanceCode.LIMIT_PASSED, Verdict.FAILS, answer);
        assertEquals(new Margin.At(Margin.End.HIGH, grams("-10")), answer.margin());
    }

    @Test
    void a_margin_has_the_unit_of_what_is_asked() {
        Limit kilograms = new Limit.AtMost(Quantity.of("0.19", Unit.KILOGRAM));
        Answer answer = LimitJudge.judge(weight(new Limit.AtMost(grams("180"))), weight(kilograms));
        assertEquals(new Margin.At(Margin.End.HIGH, grams("-10")), answer.margin());
    }

    @Test
    void an_end_that_is_open_is_not_stated() {
        answered(
                ConformanceCode.ONE_END_OPEN,
                Verdict.NOT_STATED,
                LimitJudge.judge(weight(between("160", "180")), weight(new Limit.AtLeast(grams("165")))));
    }

    @Test
    void an_end_that_is_open_saves_nothing_where_the_other_is_passed() {
        answered(
                ConformanceCode.LIMIT_PASSED,
                Verdict.FAILS,
                LimitJudge.judge(weight(between("160", "180")), weight(new Limit.AtLeast(grams("150")))));
    }

    @Test
    void more_outside_than_is_accepted_fails_and_fewer_do_not() {
        Limit limit = between("160", "180");
        Stated one = stated(Quality.WEIGHT, limit, new Outside.OutOf(1, 20), How.NOT_SAID);
        Stated two = stated(Quality.WEIGHT, limit, new Outside.OutOf(1, 10), How.NOT_SAID);
        answered(ConformanceCode.MORE_OUTSIDE, Verdict.FAILS, LimitJudge.judge(one, two));
        answered(ConformanceCode.MORE_OUTSIDE, Verdict.FAILS, LimitJudge.judge(weight(limit), one));
        answered(ConformanceCode.CLAUSE_MET, Verdict.MEETS, LimitJudge.judge(two, one));
    }

    @Test
    void what_is_found_otherwise_proves_nothing_and_what_the_buyer_leaves_open_is_free() {
        Limit lean = new Limit.AtLeast(Quantity.of("95", Unit.PERCENT));
        Stated visual = stated(Quality.LEAN, lean, new Outside.None(), new How("visual", ""));
        Stated chemical = stated(Quality.LEAN, lean, new Outside.None(), new How("chemical", ""));
        Stated any = stated(Quality.LEAN, lean, new Outside.None(), How.NOT_SAID);
        answered(ConformanceCode.FOUND_OTHERWISE, Verdict.NOT_STATED, LimitJudge.judge(visual, chemical));
        answered(ConformanceCode.FOUND_OTHERWISE, Verdict.NOT_STATED, LimitJudge.judge(visual, any));
        answered(ConformanceCode.CLAUSE_MET, Verdict.MEETS, LimitJudge.judge(any, chemical));
    }

    @Test
    void two_degrees_fahrenheit_are_a_difference_and_no_temperature() {
        Stated asked = stated(
                Quality.TEMPERATURE,
                new Limit.AtMost(Quantity.of("38", Unit.FAHRENHEIT)),
                new Outside.None(),
                How.NOT_SAID);
        Stated held = stated(
                Quality.TEMPERATURE,
                new Limit.AtMost(Quantity.of("40", Unit.FAHRENHEIT)),
                new Outside.None(),
                How.NOT_SAID);
        assertEquals(
                new Margin.At(Margin.End.HIGH, Quantity.of("-2", Unit.FAHRENHEIT)),
                LimitJudge.judge(asked, held).margin());
    }
}
