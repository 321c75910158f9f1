package dev.gambrel.conformance.laws;

import dev.gambrel.tree.Carcass;
import dev.gambrel.tree.Cut;
import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.Description;
import dev.gambrel.tree.Part;
import dev.gambrel.tree.Specification;
import dev.gambrel.tree.Way;
import dev.gambrel.tree.anatomy.Piece;
import dev.gambrel.tree.anatomy.Species;
import dev.gambrel.tree.bench.Bench;
import dev.gambrel.tree.estimate.Predictors;
import java.util.Comparator;
import java.util.List;

/** Cut trees with every list in one order, so that two are equal when they hold the same in whatever order. */
final class Unordered {
    private Unordered() {}

    static CutTree of(CutTree tree) {
        Carcass carcass = tree.carcass();
        return new CutTree(
                new Specification(
                        tree.specification().title(),
                        tree.specification().revision(),
                        tree.specification().standing(),
                        sorted(tree.specification().allowances()),
                        tree.specification().side(),
                        sorted(tree.terms())),
                new Carcass(
                        carcass.basis(),
                        carcass.dressing(),
                        carcass.band(),
                        sorted(carcass.steps()),
                        sorted(carcass.grades()),
                        of(carcass.predictors())),
                of(tree.species()),
                sorted(tree.streams()),
                sorted(tree.sources()),
                parts(tree.parts()),
                sorted(tree.notes()));
    }

    private static Predictors of(Predictors predictors) {
        return new Predictors(sorted(predictors.measures()), sorted(predictors.equations()));
    }

    private static List<Part> parts(List<Part> parts) {
        return sorted(parts.stream().map(Unordered::of).toList());
    }

    private static Part of(Part part) {
        if (part instanceof Way way) {
            return new Way(of(way.work()), way.choice());
        }
        return part instanceof Cut cut ? of(cut) : part;
    }

    private static Cut of(Cut cut) {
        Description d = cut.description();
        Description description = new Description(
                d.boneState(),
                sorted(d.contents()),
                sorted(d.separations()),
                sorted(d.references()),
                sorted(d.otherNames()),
                sorted(d.notes()),
                of(d.bench()));
        return new Cut(
                cut.name(),
                cut.pieces(),
                cut.share(),
                description,
                parts(cut.parts()),
                cut.home(),
                sorted(cut.portions()));
    }

    private static Bench of(Bench bench) {
        return new Bench(
                bench.matching(),
                bench.ribs(),
                sorted(bench.treatments()),
                sorted(bench.after()),
                bench.people(),
                sorted(bench.terms()));
    }

    private static Species of(Species species) {
        return new Species(
                species.name(),
                sorted(species.otherNames()),
                species.ribs(),
                species.vertebrae(),
                sorted(species.pieces().stream().map(Unordered::of).toList()));
    }

    private static Piece of(Piece piece) {
        Piece.Anatomy anatomy = new Piece.Anatomy(
                sorted(piece.anatomy().bones()),
                sorted(piece.anatomy().muscles()),
                sorted(piece.anatomy().glands()));
        return new Piece(
                piece.name(),
                sorted(piece.otherNames()),
                piece.pieces(),
                anatomy,
                sorted(piece.published()),
                sorted(piece.references()),
                sorted(piece.parts().stream().map(Unordered::of).toList()));
    }

    private static <T> List<T> sorted(List<T> list) {
        return list.stream().sorted(Comparator.comparing(Object::toString)).toList();
    }
}
