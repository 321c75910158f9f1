package dev.gambrel.yields.comparison.fact;

import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.Stream;
import dev.gambrel.tree.WeightBand;
import dev.gambrel.tree.anatomy.AnatomicalCount;
import dev.gambrel.tree.bench.Matching;
import dev.gambrel.tree.portion.Fewest;
import dev.gambrel.tree.portion.Limit;
import dev.gambrel.tree.portion.Measure;
import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Collectors;

/** What limits something without being written as a limit. */
final class LimitFacts {
    private LimitFacts() {}

    static void stated(String what, Aspect aspect, Limit limit, Facts facts) {
        if (limit.least().isPresent() || limit.most().isPresent()) {
            facts.limit(what, aspect, 0, limit);
        }
    }

    static void band(WeightBand band, Facts facts) {
        if (band instanceof WeightBand.Stated stated) {
            facts.limit("weight band", Aspect.BAND, 0, new Limit.Between(stated.low(), stated.high()));
        }
    }

    /** A stream is sold as no fatter than it says. */
    static void lean(Stream.Lean lean, int index, Facts facts) {
        if (lean instanceof Stream.Lean.Stated stated) {
            String words = (stated.percent() + " " + stated.judged().words()).strip();
            Limit limit = new Limit.AtLeast(stated.percent());
            facts.limit(
                    "lean",
                    Aspect.LEAN,
                    index,
                    new Meaning.Bounded(stated.judged().words(), limit),
                    words);
        }
    }

    static void onlyFrom(List<TradeName> cuts, int index, Facts facts) {
        if (!cuts.isEmpty()) {
            Meaning names = new Meaning.OneOf(cuts.stream().map(TradeName::key).collect(Collectors.toSet()));
            facts.add("where it may come from", Aspect.STREAM, index, names, "only from " + Facts.listed(cuts));
        }
    }

    /** Alike to the eye gives no figure: one that is added narrows it. */
    static void matching(Matching matching, Facts facts) {
        if (matching instanceof Matching.Within within) {
            facts.limit(
                    "likeness of the pair",
                    Aspect.MATCHING,
                    0,
                    new Meaning.Bounded("", new Limit.AtMost(within.difference())),
                    "within " + within.difference());
        } else if (matching instanceof Matching.Alike) {
            facts.limit(
                    "likeness of the pair",
                    Aspect.MATCHING,
                    0,
                    new Meaning.Bounded("", new Limit.NotStated()),
                    "alike");
        }
    }

    static void ribs(AnatomicalCount ribs, Facts facts) {
        if (ribs.isStated()) {
            Limit limit = new Limit.Between(number(ribs.least()), number(ribs.most()));
            facts.limit("number of ribs", Aspect.RIB_COUNT, 0, new Meaning.Bounded("", limit), ribs.toString());
        }
    }

    static void smallest(Measure smallest, Facts facts) {
        if (smallest instanceof Measure.Stated stated) {
            facts.limit("smallest that counts", Aspect.SMALLEST, 0, new Limit.AtLeast(stated.value()));
        }
    }

    static void fewest(Fewest fewest, Facts facts) {
        if (fewest instanceof Fewest.From from) {
            String whole = from.whole().words();
            Limit limit = new Limit.AtLeast(number(from.number()));
            facts.limit(
                    "fewest portions",
                    Aspect.FEWEST,
                    0,
                    new Meaning.Bounded(whole, limit),
                    "at least " + from.number() + " from a " + whole);
        }
    }

    private static Quantity number(int number) {
        return new Quantity(BigDecimal.valueOf(number), Unit.NUMBER);
    }
}
