package dev.gambrel.yields.comparison.fact;

import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.anatomy.AnatomicalCount;
import dev.gambrel.tree.anatomy.OtherName;
import dev.gambrel.tree.anatomy.Piece;
import dev.gambrel.tree.anatomy.Reference;
import dev.gambrel.tree.anatomy.Species;
import dev.gambrel.yields.comparison.fact.Stated.Family;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The animal. What is known of its pieces is held against a specification and weighs nothing, so that it is words here. */
final class SpeciesFacts {
    private static final TradeName ANIMAL = TradeName.of("animal");

    private SpeciesFacts() {}

    static Stated of(Species species) {
        Facts facts = new Facts();
        counted("ribs of the animal", species.ribs(), facts);
        species.vertebrae()
                .forEach((region, count) -> counted(region.words() + " vertebrae of the animal", count, facts));
        species.otherNames()
                .forEach(other -> facts.free("another name of the animal", Aspect.SPECIES, 0, words(other)));
        pieces(species.pieces(), "", facts);
        Meaning animal = new Meaning.ReliedOn(List.of(species.name().key()), List.of());
        Fact identity =
                new Fact("species", Aspect.SPECIES, 0, animal, species.name().text(), List.of());
        return new Stated(Family.SPECIES, ANIMAL, TreePath.ROOT, identity, facts.all(), List.of(), List.of());
    }

    private static void counted(String what, AnatomicalCount count, Facts facts) {
        if (count.isStated()) {
            facts.reliedOn(what, Aspect.SPECIES, count.toString(), count.toString());
        }
    }

    private static void pieces(List<Piece> pieces, String above, Facts facts) {
        for (Piece piece : pieces) {
            String path = above + piece.name().key();
            Meaning known = new Meaning.Free(known(piece));
            facts.add("what is known of the " + path, Aspect.SPECIES, 0, known, summary(piece));
            pieces(piece.parts(), path + " / ", facts);
        }
    }

    private static String known(Piece piece) {
        return Stream.of(
                        Stream.of(piece.pieces().toString()),
                        structures("bone", piece.anatomy().bones()),
                        structures("muscle", piece.anatomy().muscles()),
                        structures("gland", piece.anatomy().glands()),
                        sorted(piece.otherNames().stream().map(SpeciesFacts::words)),
                        sorted(piece.published().stream().map(SpeciesFacts::words)),
                        sorted(piece.references().stream().map(SpeciesFacts::words)))
                .flatMap(words -> words)
                .collect(Collectors.joining("\n"));
    }

    private static Stream<String> structures(String kind, List<Piece.Structure> structures) {
        return sorted(structures.stream()
                .map(structure -> kind + " " + structure.name().key() + " "
                        + structure.otherNames().stream()
                                .map(SpeciesFacts::words)
                                .sorted()
                                .toList()));
    }

    private static Stream<String> sorted(Stream<String> words) {
        return words.sorted();
    }

    private static String words(OtherName other) {
        return other.name() + (other.regions().isEmpty() ? "" : " (" + String.join(", ", other.regions()) + ")");
    }

    private static String words(Piece.Published published) {
        return published.of().key() + " " + Exact.of(published.expected()) + " " + Exact.unordered(published.sources());
    }

    private static String words(Reference reference) {
        return String.join(" ", reference.scheme().key(), reference.number(), reference.edition(), reference.but());
    }

    private static String summary(Piece piece) {
        String bones = Facts.listed(
                piece.anatomy().bones().stream().map(Piece.Structure::name).toList());
        return (bones.isEmpty() ? "no bones told" : "bones: " + bones)
                + piece.published().stream()
                        .map(p -> "; " + p.expected() + " of " + p.of())
                        .collect(Collectors.joining());
    }
}
