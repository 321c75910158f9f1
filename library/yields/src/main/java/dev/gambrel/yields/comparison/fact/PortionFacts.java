package dev.gambrel.yields.comparison.fact;

import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.tree.Portion;
import dev.gambrel.tree.portion.Acceptance;
import dev.gambrel.tree.portion.Aim;
import dev.gambrel.tree.portion.Finish;
import dev.gambrel.tree.portion.Limit;
import dev.gambrel.tree.portion.Measure;
import dev.gambrel.tree.portion.Precedence;
import dev.gambrel.tree.portion.Slicing;
import dev.gambrel.yields.comparison.fact.Stated.Family;
import java.util.List;

/** A portion: what is aimed at is a figure, what is accepted is a limit. */
final class PortionFacts {
    private static final String AIM = "aimed at";

    private PortionFacts() {}

    static Stated of(Portion portion, TreePath above) {
        Facts facts = new Facts();
        String aim = aim(portion.aim(), facts);
        acceptance(portion.acceptance(), facts);
        slicing(portion.slicing(), facts);
        finish(portion.finish(), facts);
        ends(portion.endPieces(), facts);
        PartFacts.home(portion.remainder(), "remainder to", Aspect.STREAM, facts);
        Fact identity = PartFacts.identity("portion", "portion, " + aim);
        return new Stated(
                Family.PORTION,
                portion.name(),
                above.then(portion.name()),
                identity,
                facts.all(),
                List.of(),
                List.of());
    }

    private static String aim(Aim aim, Facts facts) {
        if (aim instanceof Aim.Weight weight) {
            facts.figure(AIM, Aspect.SHARE, 0, "weight", weight.weight());
            return weight.weight().toString();
        } else if (aim instanceof Aim.Thickness thickness) {
            facts.figure(AIM, Aspect.THICKNESS, 0, "thickness", thickness.thickness());
            return thickness.thickness() + " thick";
        } else if (aim instanceof Aim.WeightAndThickness both) {
            facts.figure(AIM, Aspect.SHARE, 0, "weight", both.weight());
            facts.figure("thickness aimed at", Aspect.THICKNESS, 0, both.thickness());
            return both.weight() + ", " + both.thickness() + " thick";
        }
        String into = "into " + ((Aim.Number) aim).number();
        facts.add(AIM, Aspect.NUMBER, 0, new Meaning.ReliedOn(List.of(into), List.of()), into);
        return into;
    }

    private static void acceptance(Acceptance acceptance, Facts facts) {
        LimitFacts.stated("weight accepted", Aspect.LIMIT, acceptance.weight(), facts);
        LimitFacts.stated("thickness accepted", Aspect.THICKNESS_LIMIT, acceptance.thickness(), facts);
        if (!(acceptance.weight() instanceof Limit.NotStated && acceptance.thickness() instanceof Limit.NotStated)) {
            SupplyFacts.outside(acceptance.outside(), "range", Aspect.LIMIT, 0, facts);
        }
        LimitFacts.smallest(acceptance.smallest(), facts);
        LimitFacts.fewest(acceptance.fewest(), facts);
        if (acceptance.precedence() != Precedence.NOT_STATED) {
            String rules = acceptance.precedence().words();
            facts.reliedOn("what rules", Aspect.PRECEDENCE, rules, rules);
        }
    }

    private static void slicing(Slicing slicing, Facts facts) {
        if (slicing.kerf() instanceof Measure.Stated kerf) {
            facts.figure(
                    "lost at each cut",
                    Aspect.KERF,
                    0,
                    List.of(Exact.of(kerf.value())),
                    kerf.value().toString());
        }
        if (slicing.length() instanceof Slicing.Length.Stated length) {
            facts.figure("length that is sliced", Aspect.LENGTH, 0, length.expected());
        }
        if (!slicing.direction().isEmpty()) {
            facts.reliedOn("way of the slices", Aspect.NAME, slicing.direction(), slicing.direction());
        }
    }

    private static void finish(Finish finish, Facts facts) {
        Finish.Binding binding = finish.binding();
        if (binding instanceof Finish.Binding.Tied tied) {
            binding(List.of("tied", Integer.toString(tied.times())), "tied " + tied.times() + " times", facts);
        } else if (binding instanceof Finish.Binding.TiedEvery every) {
            binding(List.of("every", Exact.of(every.spacing())), "tied every " + every.spacing(), facts);
        } else if (binding instanceof Finish.Binding.Netted net) {
            binding(List.of("net", Exact.of(net.size())), "netted " + net.size(), facts);
        }
        if (finish.pack() instanceof Finish.Pack.Together pack) {
            List<String> value =
                    List.of(Integer.toString(pack.number()), pack.container().key());
            facts.reliedOn("pack", Aspect.PACK, 0, value, pack.number() + " to a " + pack.container());
        }
        for (int i = 0; i < finish.tares().size(); i++) {
            Finish.Tare tare = finish.tares().get(i);
            String what = "tare of " + tare.what().key();
            facts.figure(
                    what,
                    Aspect.TARE,
                    i,
                    List.of(Exact.of(tare.weight())),
                    tare.weight().toString());
        }
    }

    private static void binding(List<String> value, String words, Facts facts) {
        facts.reliedOn("binding", Aspect.BINDING, 0, value, words);
    }

    private static void ends(Portion.EndPieces ends, Facts facts) {
        PartFacts.home(ends.home(), "end pieces to", Aspect.END_PIECES, facts);
        if (ends instanceof Portion.EndPieces.Weighed weighed) {
            facts.figure("end pieces", Aspect.END_PIECES, 0, weighed.weight());
        }
    }
}
