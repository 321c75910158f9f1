package dev.gambrel.json;

import dev.gambrel.json.located.Findings;
import dev.gambrel.json.located.Located;
import dev.gambrel.json.located.ObjectReader;
import dev.gambrel.json.located.Reading;
import dev.gambrel.json.located.Readings;
import dev.gambrel.quantity.Dimension;
import dev.gambrel.tree.anatomy.AnatomicalCount;
import dev.gambrel.tree.anatomy.Piece;
import dev.gambrel.tree.anatomy.Species;
import dev.gambrel.tree.anatomy.SpineRegion;
import java.util.EnumMap;
import java.util.Map;

/** Reads a species: its bones, its pieces and what is published of them. */
final class SpeciesReader {
    private static final Reading<AnatomicalCount> COUNT = Readings.object(FigureReader::count);
    private static final Reading<Piece.Structure> STRUCTURE = Readings.object(
            in -> new Piece.Structure(DescriptionReader.name(in), in.list("otherNames", DescriptionReader.OTHER_NAME)));

    private SpeciesReader() {}

    static Species species(ObjectReader in) {
        return new Species(
                DescriptionReader.name(in),
                in.list("otherNames", DescriptionReader.OTHER_NAME),
                in.optional("ribs", AnatomicalCount.NOT_STATED, COUNT),
                in.optional("vertebrae", Map.of(), Readings.object(SpeciesReader::vertebrae)),
                in.list("pieces", SpeciesReader::piece));
    }

    private static Map<SpineRegion, AnatomicalCount> vertebrae(ObjectReader in) {
        Map<SpineRegion, AnatomicalCount> counts = new EnumMap<>(SpineRegion.class);
        for (SpineRegion region : SpineRegion.values()) {
            boolean stated = in.has(region.words());
            AnatomicalCount count = in.optional(region.words(), AnatomicalCount.NOT_STATED, COUNT);
            if (stated) {
                counts.put(region, count);
            }
        }
        return counts;
    }

    private static Piece piece(Located value, Findings findings) {
        return Readings.object(SpeciesReader::piece).read(value, findings);
    }

    private static Piece piece(ObjectReader in) {
        return new Piece(
                DescriptionReader.name(in),
                in.list("otherNames", DescriptionReader.OTHER_NAME),
                FigureReader.pieces(in),
                in.optional("anatomy", Piece.Anatomy.NONE, Readings.object(SpeciesReader::anatomy)),
                in.list("published", Readings.object(SpeciesReader::published)),
                in.list("references", DescriptionReader.REFERENCE),
                in.list("parts", SpeciesReader::piece));
    }

    private static Piece.Anatomy anatomy(ObjectReader in) {
        return new Piece.Anatomy(
                in.list("bones", STRUCTURE), in.list("muscles", STRUCTURE), in.list("glands", STRUCTURE));
    }

    private static Piece.Published published(ObjectReader in) {
        return new Piece.Published(
                FigureReader.expected(in, Dimension.SHARE),
                in.need("of", "\"carcass\" or the name of a larger piece", Readings::name),
                in.list("sources", Readings::name));
    }
}
