package dev.gambrel.json.writing;

import dev.gambrel.tree.anatomy.AnatomicalCount;
import dev.gambrel.tree.anatomy.Piece;
import dev.gambrel.tree.anatomy.Species;
import dev.gambrel.tree.anatomy.SpineRegion;
import java.util.Map;
import java.util.Optional;

/** Writes a species: its bones, its pieces and what is published of them. */
final class SpeciesWriter {
    private SpeciesWriter() {}

    static Canonical species(Species species) {
        return Canonical.fields()
                .put("name", species.name())
                .putUnlessEmpty("otherNames", species.otherNames(), DescriptionWriter::otherName)
                .putIfStated("ribs", ribs(species.ribs()))
                .putIfStated("vertebrae", vertebrae(species.vertebrae()))
                .putUnlessEmpty("pieces", species.pieces(), SpeciesWriter::piece);
    }

    private static Optional<Canonical> ribs(AnatomicalCount ribs) {
        return ribs.equals(AnatomicalCount.NOT_STATED) ? Optional.empty() : Optional.of(FigureWriter.count(ribs));
    }

    private static Optional<Canonical> vertebrae(Map<SpineRegion, AnatomicalCount> vertebrae) {
        Canonical.Fields regions = Canonical.fields();
        vertebrae.forEach((region, count) -> regions.put(region.words(), FigureWriter.count(count)));
        return vertebrae.isEmpty() ? Optional.empty() : Optional.of(regions);
    }

    private static Canonical piece(Piece piece) {
        return Canonical.fields()
                .put("name", piece.name())
                .putUnlessEmpty("otherNames", piece.otherNames(), DescriptionWriter::otherName)
                .putIfStated("pieces", FigureWriter.pieces(piece.pieces()))
                .putIfStated("anatomy", anatomy(piece.anatomy()))
                .putUnlessEmpty("published", piece.published(), SpeciesWriter::published)
                .putUnlessEmpty("references", piece.references(), DescriptionWriter::reference)
                .putUnlessEmpty("parts", piece.parts(), SpeciesWriter::piece);
    }

    private static Optional<Canonical> anatomy(Piece.Anatomy anatomy) {
        if (anatomy.equals(Piece.Anatomy.NONE)) {
            return Optional.empty();
        }
        return Optional.of(Canonical.fields()
                .putUnlessEmpty("bones", anatomy.bones(), SpeciesWriter::structure)
                .putUnlessEmpty("muscles", anatomy.muscles(), SpeciesWriter::structure)
                .putUnlessEmpty("glands", anatomy.glands(), SpeciesWriter::structure));
    }

    private static Canonical structure(Piece.Structure structure) {
        return Canonical.fields()
                .put("name", structure.name())
                .putUnlessEmpty("otherNames", structure.otherNames(), DescriptionWriter::otherName);
    }

    private static Canonical published(Piece.Published published) {
        return FigureWriter.expected(published.expected())
                .put("of", published.of())
                .putUnlessEmpty("sources", published.sources());
    }
}
