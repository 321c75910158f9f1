package dev.gambrel.yields.comparison.fact;

import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.BoneState;
import dev.gambrel.tree.Cut;
import dev.gambrel.tree.Description;
import dev.gambrel.tree.Separation;
import dev.gambrel.tree.Way;
import dev.gambrel.tree.anatomy.OtherName;
import dev.gambrel.tree.anatomy.PieceCount;
import dev.gambrel.tree.anatomy.Reference;
import dev.gambrel.tree.bench.Bench;
import dev.gambrel.tree.bench.Treatment;
import dev.gambrel.yields.comparison.fact.Stated.Family;
import java.util.ArrayList;
import java.util.List;

/** A cut, or a way in which one is worked. */
final class CutFacts {
    private CutFacts() {}

    static Stated of(Cut cut, Fact identity, TreePath above, Facts facts) {
        TreePath path = above.then(cut.name());
        if (cut.pieces() != PieceCount.NOT_STATED) {
            boolean pair = cut.pieces() == PieceCount.TWO;
            facts.reliedOn("pieces", Aspect.COUNT, cut.pieces().name(), pair ? "two per carcass" : "one per carcass");
        }
        describe(cut.description(), facts);
        if (isWhole(cut)) {
            PartFacts.home(cut.home(), "goes to", Aspect.STREAM, facts);
        }
        List<Stated> below = new ArrayList<>(PartFacts.of(cut.parts(), path));
        cut.portions().forEach(portion -> below.add(PortionFacts.of(portion, path)));
        List<TradeName> otherNames =
                cut.description().otherNames().stream().map(OtherName::name).toList();
        return new Stated(Family.PART, cut.name(), path, identity, facts.all(), below, otherNames);
    }

    /** What is divided or worked in ways goes where its parts go. */
    private static boolean isWhole(Cut cut) {
        return !cut.isDivided() && cut.parts().stream().noneMatch(Way.class::isInstance);
    }

    private static void describe(Description description, Facts facts) {
        if (description.boneState() != BoneState.NOT_STATED) {
            String state = description.boneState().words();
            facts.reliedOn("bone", Aspect.BONE_STATE, state, state);
        }
        if (!description.contents().isEmpty()) {
            facts.reliedOn(
                    "contents",
                    Aspect.CONTENTS,
                    0,
                    Exact.unordered(description.contents()),
                    Facts.listed(description.contents()));
        }
        for (int i = 0; i < description.separations().size(); i++) {
            separation(description.separations().get(i), i, facts);
        }
        for (int i = 0; i < description.references().size(); i++) {
            reference(description.references().get(i), i, facts);
        }
        for (int i = 0; i < description.otherNames().size(); i++) {
            OtherName other = description.otherNames().get(i);
            String regions = other.regions().isEmpty() ? "" : " in " + String.join(", ", other.regions());
            facts.free("another name", Aspect.OTHER_NAME, i, other.name() + regions);
        }
        SpecificationFacts.notes(description.notes(), facts);
        bench(description.bench(), facts);
        SupplyFacts.add(description.terms(), facts);
    }

    private static void separation(Separation separation, int index, Facts facts) {
        List<String> tools = separation.tools().stream().sorted().toList();
        Meaning parted = new Meaning.ReliedOn(LandmarkWords.value(separation.landmark()), tools);
        String by = separation.tools().isEmpty() ? "" : "by " + String.join(" and ", separation.tools()) + " ";
        facts.add("parted", Aspect.SEPARATION, index, parted, (by + LandmarkWords.of(separation.landmark())).strip());
    }

    private static void reference(Reference reference, int index, Facts facts) {
        String words = reference.scheme() + " " + reference.number()
                + (reference.edition().isEmpty() ? "" : ", edition " + reference.edition())
                + (reference.range().isEmpty() ? "" : ", range " + reference.range())
                + (reference.but().isEmpty() ? "" : ", but " + reference.but())
                + (reference.rules() == Reference.Rules.NOT_STATED
                        ? ""
                        : ", " + reference.rules().words());
        String what = "number of " + reference.scheme().key();
        facts.reliedOn(
                what,
                Aspect.REFERENCE,
                index,
                List.of(
                        reference.number(),
                        reference.edition(),
                        reference.but(),
                        reference.range(),
                        reference.rules().words()),
                words);
        facts.sources("the " + what, Aspect.REFERENCE, index, reference.sources());
    }

    private static void bench(Bench bench, Facts facts) {
        LimitFacts.matching(bench.matching(), facts);
        LimitFacts.ribs(bench.ribs(), facts);
        for (int i = 0; i < bench.treatments().size(); i++) {
            Treatment treatment = bench.treatments().get(i);
            String reason = treatment.reason().isEmpty() ? "" : ", " + treatment.reason();
            facts.reliedOn(
                    "what is done with the " + treatment.tissue().key(),
                    Aspect.TREATMENT,
                    i,
                    List.of(treatment.kind().words()),
                    treatment.kind().words() + reason);
        }
        if (!bench.after().isEmpty()) {
            facts.work("comes off after", Aspect.TURN, Exact.unordered(bench.after()), Facts.listed(bench.after()));
        }
        if (bench.people() != 1) {
            String people = Integer.toString(bench.people());
            facts.work("people at it", Aspect.NAME, List.of(people), people);
        }
    }
}
