package dev.gambrel.json.trees;

import dev.gambrel.quantity.Dimension;
import dev.gambrel.tree.anatomy.AnatomicalCount;
import dev.gambrel.tree.anatomy.Piece;
import dev.gambrel.tree.anatomy.Species;
import dev.gambrel.tree.anatomy.SpineRegion;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;

/** Animals that never were. */
final class AllSpecies {
    private AllSpecies() {}

    static Arbitrary<Species> species() {
        return Combinators.combine(
                        Words.names(),
                        Words.few(Descriptions.otherNames()),
                        Arbitraries.oneOf(Figures.anatomicalCounts(), Arbitraries.just(AnatomicalCount.NOT_STATED)),
                        Arbitraries.maps(Arbitraries.of(SpineRegion.values()), Figures.anatomicalCounts()),
                        pieces(2))
                .as(Species::new);
    }

    private static Arbitrary<List<Piece>> pieces(int depth) {
        Arbitrary<List<Piece>> smaller =
                depth == 0 ? Arbitraries.just(List.of()) : Arbitraries.lazy(() -> pieces(depth - 1));
        return Words.few(Combinators.combine(
                        Words.names(),
                        Words.few(Descriptions.otherNames()),
                        Figures.pieces(),
                        anatomies(),
                        Words.few(published()),
                        Words.few(Descriptions.references()),
                        smaller)
                .as(Piece::new));
    }

    private static Arbitrary<Piece.Anatomy> anatomies() {
        Arbitrary<List<Piece.Structure>> structures =
                Words.few(Combinators.combine(Words.names(), Words.few(Descriptions.otherNames()))
                        .as(Piece.Structure::new));
        return Combinators.combine(structures, structures, structures).as(Piece.Anatomy::new);
    }

    private static Arbitrary<Piece.Published> published() {
        return Combinators.combine(Figures.expected(Dimension.SHARE), Words.names(), Words.nameLists())
                .as(Piece.Published::new);
    }
}
