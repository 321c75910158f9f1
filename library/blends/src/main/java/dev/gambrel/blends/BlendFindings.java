package dev.gambrel.blends;

import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.term.Judged;
import java.util.List;

/** Says what is wrong with a blend. */
final class BlendFindings {
    private static final Place BLEND = at(TradeName.of("blend"));

    private BlendFindings() {}

    static Diagnostic twice(Tub tub) {
        return Diagnostic.of(BlendCode.TUB_TWICE, at(tub.name()))
                .with("tub", tub.name())
                .help("Give each a name of its own, such as its lot.");
    }

    static Diagnostic judgedApart(Tub one, Tub other) {
        return judgedApart(other.name(), words(one), other).related(at(one.name()), words(one));
    }

    static Diagnostic judgedApart(LeanTarget target, Tub tub) {
        return judgedApart(tub.name(), "the target, " + target.words(), tub);
    }

    private static Diagnostic judgedApart(TradeName where, String other, Tub tub) {
        return Diagnostic.of(BlendCode.LEAN_JUDGED_APART, at(where))
                .with("one", tub.name())
                .with("judged", tub.lean().judged().words())
                .with("other", other)
                .with("otherwise", tub.lean().judged() == Judged.VISUAL ? "chemical" : "visual")
                .help("Have both analysed, or judge both by eye.");
    }

    private static String words(Tub tub) {
        return tub.name().text();
    }

    static Diagnostic outOfReach(LeanTarget target, double low, double high) {
        double gap = Math.max(target.low() - high, low - target.high());
        Diagnostic found = Diagnostic.of(BlendCode.TARGET_OUT_OF_REACH, BLEND)
                .with("target", target.words())
                .with("low", Words.percent(low))
                .with("high", Words.percent(high))
                .with("gap", Words.points(gap));
        return target.low() > high
                ? found.help("Add something leaner than " + Words.percent(target.low()) + ", or ask for less lean.")
                : found.help("Add something fatter than " + Words.percent(target.high()) + ", or ask for more lean.");
    }

    static Diagnostic notEnough(double batch, double stock) {
        return Diagnostic.of(BlendCode.NOT_ENOUGH, BLEND)
                .with("batch", Words.kilograms(batch))
                .with("stock", Words.kilograms(stock))
                .help("Make a smaller batch, or leave its weight out to be told the largest.");
    }

    static Diagnostic cannotHold(Limit limit, double gap, BatchOrder order) {
        return Diagnostic.of(BlendCode.LIMIT_CANNOT_HOLD, BLEND)
                .with("limit", limit.words())
                .with("batch", Words.kilograms(order.kilograms()))
                .with("target", order.target().words())
                .with("gap", Words.kilograms(gap))
                .help("Loosen it by that much, or ask for another lean or a smaller batch.");
    }

    static Diagnostic noAnswer(BatchOrder order) {
        return Diagnostic.of(BlendCode.NO_ANSWER, BLEND)
                .with("batch", Words.kilograms(order.kilograms()))
                .with("target", order.target().words())
                .with("why", "its figures lie very far apart")
                .help("Look for a slipped point or a wrong unit among the weights, the prices and the limits.");
    }

    static Diagnostic cutsWithoutEnd(BatchOrder order) {
        return Diagnostic.of(BlendCode.NO_ANSWER, BLEND)
                .with("batch", Words.kilograms(order.kilograms()))
                .with("target", order.target().words())
                .with("why", "a promise of " + order.tubs().all().size() + " tubs that stray takes too long")
                .help("Leave out tubs that will hardly go in, or ask for the batch without a promise.");
    }

    static Diagnostic priceMissing(Tub tub, Tub other) {
        return Diagnostic.of(BlendCode.PRICE_MISSING, at(tub.name()))
                .with("tub", tub.name())
                .with("other", other.name())
                .help("Give every tub a price: for your own trim, what it would fetch if it were sold as it is.")
                .help("Or give none of them one.");
    }

    static Diagnostic spreadMissing(Tub tub) {
        return Diagnostic.of(BlendCode.LEAN_SPREAD_MISSING, at(tub.name()))
                .with("tub", tub.name())
                .help("Say how far its lots stray, such as lean " + Words.percent(tub.percent()) + " ± 2 %.");
    }

    static Diagnostic promiseOutOfReach(BatchOrder order, double chance, double most) {
        return Diagnostic.of(BlendCode.PROMISE_OUT_OF_REACH, BLEND)
                .with("target", order.target().words())
                .with("chance", Words.percent(100 * chance))
                .with("most", "at least " + Words.percent(Math.max(0, most)))
                .help("Add leaner meat or steadier lots, or promise less.");
    }

    private static Place at(TradeName name) {
        return new Place.InTree(new TreePath(List.of(name)), Aspect.LEAN);
    }
}
