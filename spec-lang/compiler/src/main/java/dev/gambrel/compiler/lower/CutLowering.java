package dev.gambrel.compiler.lower;

import dev.gambrel.compiler.meaning.Clauses;
import dev.gambrel.compiler.meaning.Located;
import dev.gambrel.compiler.meaning.Notes;
import dev.gambrel.compiler.meaning.OtherNames;
import dev.gambrel.compiler.meaning.References;
import dev.gambrel.compiler.parse.FileReport;
import dev.gambrel.compiler.syntax.Clause;
import dev.gambrel.compiler.syntax.Container;
import dev.gambrel.compiler.syntax.Name;
import dev.gambrel.compiler.syntax.Statement;
import dev.gambrel.compiler.syntax.Statement.Declaration;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.BoneState;
import dev.gambrel.tree.Cut;
import dev.gambrel.tree.Description;
import dev.gambrel.tree.Home;
import dev.gambrel.tree.Part;
import dev.gambrel.tree.Portion;
import dev.gambrel.tree.Separation;
import dev.gambrel.tree.Share;
import dev.gambrel.tree.anatomy.OtherName;
import dev.gambrel.tree.anatomy.PieceCount;
import dev.gambrel.tree.anatomy.Reference;
import dev.gambrel.tree.term.Term;
import java.util.ArrayList;
import java.util.List;

/** A cut line and its braces. */
final class CutLowering {
    private final Doubt doubt;
    private final PartLowering parts;

    CutLowering(Doubt doubt, PartLowering parts) {
        this.doubt = doubt;
        this.parts = parts;
    }

    Cut cut(Located located, TreePath above) {
        Clauses clauses = new Clauses(located);
        TreePath path = above.then(PartLowering.name(located.line()));
        ShareReader.Read share = new ShareReader(located.report()).take(clauses, above);
        if (share.inDoubt() || located.line().damaged()) {
            doubt.about(path);
            doubt.aboutSomethingIn(path);
        }
        PieceCount count = clauses.one(Clause.Count.class, "how many there are")
                .map(Clause.Count::count)
                .orElse(PieceCount.NOT_STATED);
        return rest(located, clauses, path, count, share.share());
    }

    /** What a cut and a way of working say alike: what it is, where it goes, and what stands in the braces. */
    Cut rest(Located located, Clauses clauses, TreePath path, PieceCount count, Share share) {
        Home home = PartLowering.home(located, clauses, new Home.Product());
        Body body = new Body();
        head(clauses, body, located.report());
        clauses.finish();
        body(located, path, body);
        return body.cut(PartLowering.name(located.line()), count, share, home);
    }

    private static void head(Clauses clauses, Body body, FileReport report) {
        body.boneState = clauses.one(Clause.Bones.class, "whether bone is left in")
                .map(Clause.Bones::state)
                .orElse(BoneState.NOT_STATED);
        body.otherNames.addAll(OtherNames.take(clauses));
        SeparationLowering separations = new SeparationLowering(report);
        clauses.one(Clause.Ribs.class, "which ribs it has")
                .flatMap(separations::ribs)
                .ifPresent(body.separations::add);
        body.bench.head(clauses, report);
    }

    private void body(Located located, TreePath path, Body body) {
        FileReport report = located.report();
        for (Statement statement : located.line().body()) {
            if (!(statement instanceof Declaration line)) {
                doubt.aboutSomethingIn(path);
            } else if (Placement.fits(line, Container.CUT, report)) {
                line(new Located(line, report), path, body);
            }
        }
    }

    private void line(Located located, TreePath path, Body body) {
        switch (located.line().keyword()) {
            case PORTION_LINE ->
                new PortionLowering(located.report()).portion(located, path).ifPresent(body.portions::add);
            case SEPARATE_LINE -> body.separations.add(new SeparationLowering(located.report()).separation(located));
            case REFERENCE_LINE -> References.read(located).ifPresent(body.references::add);
            case CONTAINS_LINE ->
                located.line().names().stream().map(Name::text).forEach(body.contents::add);
            case SCORE_LINE, LEAVE_LINE -> body.bench.treatment(located);
            case NOTE_LINE -> Notes.read(located).ifPresent(body.notes::add);
            case WEIGHT_LINE,
                    THICKNESS_LINE,
                    LEAN_LINE,
                    KEEP_LINE,
                    AGE_LINE,
                    LIFE_LINE,
                    PACK_LINE,
                    CLAIM_LINE,
                    LABEL_LINE -> body.terms.addAll(TermLowering.terms(located));
            default -> parts.part(located, path).ifPresent(body.parts::add);
        }
    }

    /** Where a line lays down less than it seems to, what is laid down can no longer be counted. */
    private void terms(Located located, TreePath path, Body body) {
        List<Term> terms = TermLowering.terms(located);
        body.terms.addAll(terms);
        if (terms.isEmpty() || located.line().damaged()) {
            doubt.aboutSomethingIn(path);
        }
    }

    /** What has been read of a cut's line and braces so far. */
    private static final class Body {
        private BoneState boneState = BoneState.NOT_STATED;
        private final List<TradeName> contents = new ArrayList<>();
        private final List<Separation> separations = new ArrayList<>();
        private final List<Reference> references = new ArrayList<>();
        private final List<OtherName> otherNames = new ArrayList<>();
        private final List<String> notes = new ArrayList<>();
        private final BenchLowering bench = new BenchLowering();
        private final List<Term> terms = new ArrayList<>();
        private final List<Part> parts = new ArrayList<>();
        private final List<Portion> portions = new ArrayList<>();

        private Cut cut(TradeName name, PieceCount count, Share share, Home home) {
            Description description = new Description(
                    boneState,
                    contents,
                    separations,
                    references,
                    otherNames,
                    notes,
                    bench.bench().withTerms(terms));
            return new Cut(name, count, share, description, parts, home, portions);
        }
    }
}
