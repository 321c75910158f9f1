package dev.gambrel.tree.rules;

import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.BasisStep;
import dev.gambrel.tree.Cut;
import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.Part;
import dev.gambrel.tree.Share;
import dev.gambrel.tree.Source;
import dev.gambrel.tree.anatomy.Piece;
import dev.gambrel.tree.anatomy.Reference;
import dev.gambrel.tree.anatomy.Species;
import dev.gambrel.tree.estimate.Equation;
import dev.gambrel.tree.inspection.DeclaredOnce;
import dev.gambrel.tree.inspection.Findings;
import dev.gambrel.tree.inspection.Inspection;
import dev.gambrel.tree.inspection.Rule;
import dev.gambrel.tree.inspection.Site;
import dev.gambrel.tree.inspection.TreeCode;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;

/** Whatever a figure cites is declared as a source, once. */
final class DeclaredSources implements Rule {
    @Override
    public void check(Inspection inspection, Consumer<Diagnostic> found) {
        CutTree tree = inspection.tree();
        Set<TradeName> sources = DeclaredOnce.names(
                tree.sources().stream().map(Source::name).toList(),
                Aspect.SOURCE,
                (name, at) -> Diagnostic.of(TreeCode.DUPLICATE_SOURCE, at).with("source", name),
                found);
        for (Site site : inspection.sites()) {
            for (Part part : site.parts()) {
                if (part.share() instanceof Share.Stated stated
                        && !stated.sources().isEmpty()) {
                    checkCited(stated.sources(), site.path().then(part.name()), sources, found);
                }
                if (part instanceof Cut cut && !cut.description().references().isEmpty()) {
                    checkReferences(cut.description().references(), site.at(cut, Aspect.REFERENCE), sources, found);
                }
            }
        }
        List<BasisStep> steps = tree.carcass().steps();
        for (int i = 0; i < steps.size(); i++) {
            checkCited(steps.get(i).sources(), new Place.InTree(TreePath.ROOT, Aspect.STEP, i), sources, found);
        }
        List<Equation> equations = tree.carcass().predictors().equations();
        for (int i = 0; i < equations.size(); i++) {
            checkCited(equations.get(i).sources(), new Place.InTree(TreePath.ROOT, Aspect.ESTIMATE, i), sources, found);
        }
        checkSpecies(tree.species(), sources, found);
    }

    private static void checkSpecies(Species species, Set<TradeName> sources, Consumer<Diagnostic> found) {
        Place.InTree at = new Place.InTree(TreePath.ROOT, Aspect.SPECIES);
        checkCited(species.ribs().sources(), at, sources, found);
        species.vertebrae().values().forEach(count -> checkCited(count.sources(), at, sources, found));
        species.pieces().forEach(piece -> checkPiece(piece, at, sources, found));
    }

    private static void checkPiece(Piece piece, Place.InTree at, Set<TradeName> sources, Consumer<Diagnostic> found) {
        piece.published().forEach(figure -> checkCited(figure.sources(), at, sources, found));
        checkReferences(piece.references(), at, sources, found);
        piece.parts().forEach(part -> checkPiece(part, at, sources, found));
    }

    private static void checkReferences(
            List<Reference> references, Place.InTree at, Set<TradeName> sources, Consumer<Diagnostic> found) {
        references.forEach(reference -> checkCited(reference.sources(), at, sources, found));
    }

    private static void checkCited(
            List<TradeName> cited, TreePath path, Set<TradeName> sources, Consumer<Diagnostic> found) {
        for (int i = 0; i < cited.size(); i++) {
            checkCited(List.of(cited.get(i)), new Place.InTree(path, Aspect.SOURCE, i), sources, found);
        }
    }

    private static void checkCited(
            List<TradeName> cited, Place.InTree at, Set<TradeName> sources, Consumer<Diagnostic> found) {
        for (TradeName source : cited) {
            if (!sources.contains(source)) {
                Diagnostic finding = Diagnostic.of(TreeCode.UNKNOWN_SOURCE, at).with("source", source);
                found.accept(Findings.suggestOrDeclare(
                        finding, source, sources, "source " + source + ", published \"where it is printed\""));
            }
        }
    }
}
