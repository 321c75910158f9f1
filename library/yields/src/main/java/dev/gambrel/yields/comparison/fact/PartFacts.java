package dev.gambrel.yields.comparison.fact;

import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.tree.Cut;
import dev.gambrel.tree.Home;
import dev.gambrel.tree.Part;
import dev.gambrel.tree.Share;
import dev.gambrel.tree.SourceLean;
import dev.gambrel.tree.TrimRule;
import dev.gambrel.tree.Way;
import dev.gambrel.tree.portion.Limit;
import dev.gambrel.yields.comparison.fact.Stated.Family;
import java.util.List;

/** What leaves a cut. */
final class PartFacts {
    /** What a rest is. */
    static final Meaning REST = meaning("rest");
    /** What bones are. */
    static final Meaning BONE = meaning("bone");

    private PartFacts() {}

    private static Meaning meaning(String kind) {
        return new Meaning.ReliedOn(List.of(kind), List.of());
    }

    static Fact identity(String kind, String words) {
        return new Fact("what it is", Aspect.NAME, 0, meaning(kind), words, List.of());
    }

    static List<Stated> of(List<Part> parts, TreePath above) {
        return parts.stream().map(part -> of(part, above)).toList();
    }

    private static Stated of(Part part, TreePath above) {
        Facts facts = new Facts();
        if (part instanceof Cut cut) {
            share(cut.share(), facts);
            return CutFacts.of(cut, identity("cut", withShare("cut", part)), above, facts);
        } else if (part instanceof Way way) {
            ChoiceFacts.add(way.choice(), facts);
            return CutFacts.of(way.work(), identity("way", "way of working"), above, facts);
        }
        share(part.share(), facts);
        home(part.home(), "goes to", Aspect.STREAM, facts);
        if (!part.after().isEmpty()) {
            facts.work("comes off after", Aspect.TURN, Exact.unordered(part.after()), Facts.listed(part.after()));
        }
        if (part instanceof Part.Bone bone) {
            facts.reliedOn("bones", Aspect.CONTENTS, 0, Exact.unordered(bone.bones()), Facts.listed(bone.bones()));
        }
        String kind = part instanceof Part.Trim trim ? trim(trim.rule(), facts) : kind(part);
        return new Stated(
                family(part),
                part.name(),
                above.then(part.name()),
                identity(kind, withShare(kind, part)),
                facts.all(),
                List.of(),
                List.of());
    }

    private static Family family(Part part) {
        return part instanceof Part.Bone ? Family.PART : part instanceof Part.Trim ? Family.TRIM : Family.WEIGHT;
    }

    private static String kind(Part part) {
        return part instanceof Part.Bone ? "bone" : part instanceof Part.Rest ? "rest" : "loss";
    }

    private static String withShare(String kind, Part part) {
        if (part.share() instanceof Share.Stated stated) {
            return kind + ", " + stated.expected();
        }
        return part.share() instanceof Share.Estimated estimated
                ? kind + ", estimated by " + estimated.equation()
                : kind;
    }

    private static void share(Share share, Facts facts) {
        if (share instanceof Share.Stated stated) {
            facts.figure("share", Aspect.SHARE, 0, "stated", stated.expected());
            for (int i = 0; i < stated.others().size(); i++) {
                Share.Derived other = stated.others().get(i);
                facts.figure("share of " + other.of().key(), Aspect.DERIVED_SHARE, i, other.expected());
            }
            facts.sources("the share", Aspect.SOURCE, 0, stated.sources());
        } else if (share instanceof Share.Estimated estimated) {
            Meaning equation =
                    new Meaning.Figure("estimated", List.of(estimated.equation().key()));
            facts.add("share", Aspect.SHARE, 0, equation, "estimated by " + estimated.equation());
        }
    }

    static void home(Home home, String what, Aspect aspect, Facts facts) {
        if (home instanceof Home.ToStream to) {
            facts.add(
                    what,
                    aspect,
                    0,
                    new Meaning.Route(to.stream().key()),
                    to.stream().text());
            if (to.lean() instanceof SourceLean.Stated lean) {
                String words = (lean.percent() + " " + lean.judged().words()).strip();
                facts.figure(
                        "lean of it",
                        Aspect.LEAN,
                        0,
                        List.of(lean.judged().words(), Exact.of(lean.percent()).toString()),
                        words);
            }
        } else if (home instanceof Home.Product) {
            facts.add(what, aspect, 0, new Meaning.Route(""), "product");
        }
    }

    private static String trim(TrimRule rule, Facts facts) {
        if (rule instanceof TrimRule.FatCover cover) {
            for (int i = 0; i < cover.limits().size(); i++) {
                TrimRule.FatLimit limit = cover.limits().get(i);
                facts.limit("fat cover " + limit.where().words(), Aspect.LIMIT, i, new Limit.AtMost(limit.atMost()));
            }
            finish(cover.finish(), facts);
            return "trim of fat";
        } else if (rule instanceof TrimRule.Removal removal) {
            facts.reliedOn(
                    "tissue",
                    Aspect.NAME,
                    removal.tissue().key(),
                    removal.tissue().text());
            return "removal";
        } else if (rule instanceof TrimRule.GlandRemoval removal) {
            facts.reliedOn(
                    "gland", Aspect.NAME, removal.gland().key(), removal.gland().text());
            return "removal of a gland";
        }
        return "squaring off";
    }

    private static void finish(TrimRule.FatFinish finish, Facts facts) {
        if (finish.planed()) {
            facts.reliedOn("surface of the fat", Aspect.LIMIT, "planed", "planed");
        }
        if (finish.practicallyFree()) {
            facts.reliedOn("freedom from fat", Aspect.LIMIT, "free", "practically free");
        }
        if (!finish.measured().isEmpty()) {
            facts.reliedOn("how fat is measured", Aspect.LIMIT, finish.measured(), finish.measured());
        }
    }
}
