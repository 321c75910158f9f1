package dev.gambrel.yields.conformance;

import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.text.TradeName;
import dev.gambrel.yields.conformance.clause.Clause.Limited;
import dev.gambrel.yields.conformance.clause.Quality;
import dev.gambrel.yields.conformance.clause.Stated;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Optional;

/**
 * A limit against a limit, compared exactly. The house's nearest one counts. It is met if nothing that the house's allows lies
 * outside what is asked; an end that the house leaves open is not stated.
 */
final class LimitJudge {
    /** Six figures are more than any scale shows. */
    private static final MathContext SHOWN = new MathContext(6);

    private final Finding finding;
    private final Limited asked;
    private final Limited held;

    private LimitJudge(Stated asked, Stated held) {
        this.finding = new Finding(asked, List.of(held));
        this.asked = (Limited) asked.clause();
        this.held = (Limited) held.clause();
    }

    /** The answer to a limit where the house lays one down about the same. */
    static Answer judge(Stated asked, Stated held) {
        LimitJudge judge = new LimitJudge(asked, held);
        if (!judge.isFoundAlike()) {
            return judge.finding.answer(ConformanceCode.FOUND_OTHERWISE, Verdict.NOT_STATED);
        }
        return judge.asked.quality() == Quality.RIB_COUNT ? judge.ribs() : judge.limits();
    }

    /** What the buyer does not say he leaves to the house. */
    private boolean isFoundAlike() {
        return isSame(asked.how().by(), held.how().by())
                && isSame(asked.how().from(), held.how().from());
    }

    private static boolean isSame(String wanted, String given) {
        return wanted.isEmpty()
                || TradeName.isAcceptable(wanted)
                        && TradeName.isAcceptable(given)
                        && TradeName.of(wanted).equals(TradeName.of(given));
    }

    /** A house that leaves a choice gives whatever is ordered of it. */
    private Answer ribs() {
        boolean mayBeChosen = held.limit()
                                .least()
                                .orElseThrow()
                                .compareTo(asked.limit().most().orElseThrow())
                        <= 0
                && held.limit()
                                .most()
                                .orElseThrow()
                                .compareTo(asked.limit().least().orElseThrow())
                        >= 0;
        Answer answer = limits();
        return mayBeChosen && answer.verdict() == Verdict.FAILS
                ? finding.answer(ConformanceCode.CHOSEN_AT_ORDER, Verdict.MEETS)
                : answer;
    }

    private Answer limits() {
        Optional<Gap> low =
                Gap.at(Margin.End.LOW, asked.limit().least(), held.limit().least());
        Optional<Gap> high =
                Gap.at(Margin.End.HIGH, asked.limit().most(), held.limit().most());
        Optional<Gap> least = least(low, high);
        if (least.filter(Gap::isPassed).isPresent()) {
            return passed(least.get().shown());
        }
        boolean openLow = asked.limit().least().isPresent() && low.isEmpty();
        boolean openHigh = asked.limit().most().isPresent() && high.isEmpty();
        if (openLow || openHigh) {
            Diagnostic reason = finding.reason(ConformanceCode.ONE_END_OPEN)
                    .with("end", (openLow ? Margin.End.LOW : Margin.End.HIGH).words());
            return finding.answer(reason, Verdict.NOT_STATED, new Margin.None());
        }
        return held.outside().isWithin(asked.outside())
                ? finding.meets(least.<Margin>map(Gap::shown).orElse(new Margin.None()))
                : finding.answer(ConformanceCode.MORE_OUTSIDE, Verdict.FAILS);
    }

    private Answer passed(Margin.At margin) {
        Quantity over =
                new Quantity(margin.amount().amount().negate(), margin.amount().unit());
        Diagnostic reason = finding.reason(ConformanceCode.LIMIT_PASSED)
                .with("amount", over)
                .with("way", margin.end() == Margin.End.LOW ? "less" : "more")
                .with("end", margin.end().words());
        return finding.answer(reason, Verdict.FAILS, margin);
    }

    private static Optional<Gap> least(Optional<Gap> low, Optional<Gap> high) {
        if (low.isEmpty() || high.isEmpty()) {
            return low.or(() -> high);
        }
        return low.get().inside().compareTo(high.get().inside()) < 0 ? low : high;
    }

    /**
     * How far the house's end lies inside what is asked.
     *
     * @param end which end
     * @param inside exactly, in the unit of comparison; less than 0 where it lies outside
     * @param asked what is asked, for its unit
     */
    private record Gap(Margin.End end, BigDecimal inside, Quantity asked) {
        /** Nothing where one of them has no such end. */
        static Optional<Gap> at(Margin.End end, Optional<Quantity> wanted, Optional<Quantity> given) {
            return wanted.flatMap(ask -> given.map(give -> {
                BigDecimal over = give.common().subtract(ask.common());
                return new Gap(end, end == Margin.End.LOW ? over : over.negate(), ask);
            }));
        }

        boolean isPassed() {
            return inside.signum() < 0;
        }

        /** A difference has no zero point: 2 °F warmer are 1.1 °C, not -16.7 °C. */
        Margin.At shown() {
            BigDecimal amount = inside.divide(asked.unit().factor(), SHOWN).stripTrailingZeros();
            BigDecimal plain = amount.scale() < 0 ? amount.setScale(0) : amount;
            return new Margin.At(end, Quantity.rounded(plain, asked.unit()));
        }
    }
}
