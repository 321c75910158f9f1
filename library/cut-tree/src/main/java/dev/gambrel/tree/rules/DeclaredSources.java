package dev.gambrel.tree.rules;

import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.Part;
import dev.gambrel.tree.Piece;
import dev.gambrel.tree.Share;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Supplier;

/** Whatever a figure cites is declared as a source, once. */
final class DeclaredSources implements Rule {
    @Override
    public void check(Inspection inspection, Consumer<Diagnostic> found) {
        Set<TradeName> sources = declared(inspection.tree(), found);
        for (Site site : inspection.sites()) {
            for (Part part : site.parts()) {
                if (part.share() instanceof Share.Stated stated) {
                    checkCited(stated.sources(), () -> site.path().then(part.name()), sources, found);
                }
            }
        }
        inspection.tree().species().pieces().forEach(piece -> checkPublished(piece, sources, found));
    }

    private static Set<TradeName> declared(CutTree tree, Consumer<Diagnostic> found) {
        Set<TradeName> sources = new LinkedHashSet<>();
        for (int i = 0; i < tree.sources().size(); i++) {
            TradeName name = tree.sources().get(i).name();
            if (!sources.add(name)) {
                found.accept(Diagnostic.of(TreeCode.DUPLICATE_SOURCE, new Place.InTree(TreePath.ROOT, Aspect.SOURCE, i))
                        .with("source", name)
                        .help("Take one of the two lines out, or give it another name."));
            }
        }
        return sources;
    }

    private static void checkPublished(Piece piece, Set<TradeName> sources, Consumer<Diagnostic> found) {
        piece.published().forEach(figure -> checkCited(figure.sources(), () -> TreePath.ROOT, sources, found));
        piece.parts().forEach(part -> checkPublished(part, sources, found));
    }

    private static void checkCited(
            List<TradeName> cited, Supplier<TreePath> path, Set<TradeName> sources, Consumer<Diagnostic> found) {
        for (int i = 0; i < cited.size(); i++) {
            if (!sources.contains(cited.get(i))) {
                Diagnostic finding = Diagnostic.of(
                                TreeCode.UNKNOWN_SOURCE, new Place.InTree(path.get(), Aspect.SOURCE, i))
                        .with("source", cited.get(i));
                found.accept(Findings.suggest(finding, cited.get(i), sources)
                        .help("Or declare it: source " + cited.get(i) + ", published \"where it is printed\""));
            }
        }
    }
}
