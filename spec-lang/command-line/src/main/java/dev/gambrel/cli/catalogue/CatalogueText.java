package dev.gambrel.cli.catalogue;

import dev.gambrel.compiler.catalogue.CatalogueSpecies;
import dev.gambrel.diagnostic.Visible;
import dev.gambrel.tree.Source;
import dev.gambrel.tree.anatomy.AnatomicalCount;
import dev.gambrel.tree.anatomy.OtherName;
import dev.gambrel.tree.anatomy.Piece;
import dev.gambrel.tree.anatomy.PieceCount;
import dev.gambrel.tree.anatomy.Species;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** The list of species, and one species as a tree of its pieces. */
final class CatalogueText {
    private static final String ROW = "%-14s%8s%10s%16s%10s%n";

    private CatalogueText() {}

    /**
     * The species that there are, a line each.
     *
     * @param catalogue all species
     * @return lines, each ended by a line feed
     */
    public static String list(List<CatalogueSpecies> catalogue) {
        StringBuilder out = new StringBuilder(row("species", "pieces", "numbers", "printed shares", "sources"));
        for (CatalogueSpecies species : catalogue) {
            List<Piece> pieces = species.pieces();
            out.append(row(
                    species.species().name().text(),
                    String.valueOf(pieces.size()),
                    String.valueOf(
                            pieces.stream().mapToInt(p -> p.references().size()).sum()),
                    String.valueOf(
                            pieces.stream().mapToInt(p -> p.published().size()).sum()),
                    String.valueOf(species.sources().size())));
        }
        return out
                + "→ The pieces of one: gambrel catalogue sheep\n→ One piece, by any name: gambrel catalogue sheep best end\n";
    }

    private static String row(String... cells) {
        return String.format(Locale.ROOT, ROW, (Object[]) cells).replace("\r\n", "\n");
    }

    /**
     * The pieces of a species, each under the piece that holds it, then the sources.
     *
     * @param known the species
     * @return lines, each ended by a line feed
     */
    public static String species(CatalogueSpecies known) {
        Species species = known.species();
        StringBuilder out = new StringBuilder(Visible.text(species.name().text()));
        if (!species.otherNames().isEmpty()) {
            out.append(", also ").append(names(species.otherNames(), ", "));
        }
        out.append('\n').append(counts(species)).append("\n\n");
        species.pieces().forEach(piece -> piece(piece, "", out));
        return out.append("\nsources\n").append(sources(known.sources())).toString();
    }

    private static String counts(Species species) {
        String vertebrae = species.vertebrae().entrySet().stream()
                .filter(region -> region.getValue().isStated())
                .map(region -> region.getKey().words() + " " + region.getValue())
                .collect(Collectors.joining(", "));
        AnatomicalCount ribs = species.ribs();
        return "Ribs: " + (ribs.isStated() ? ribs.toString() : "not stated") + ". Vertebrae: "
                + (vertebrae.isEmpty() ? "not stated" : vertebrae) + ".";
    }

    private static void piece(Piece piece, String indent, StringBuilder out) {
        out.append(indent).append(Visible.text(piece.name().text()));
        if (piece.pieces() != PieceCount.NOT_STATED) {
            out.append(", ").append(count(piece.pieces()));
        }
        if (!piece.otherNames().isEmpty()) {
            out.append(", also ").append(names(piece.otherNames(), ", "));
        }
        out.append('\n');
        piece.parts().forEach(part -> piece(part, indent + "  ", out));
    }

    /** How many there are, in words. */
    static String count(PieceCount count) {
        return switch (count) {
            case ONE -> "one per carcass";
            case TWO -> "two per carcass";
            case NOT_STATED -> "not stated";
        };
    }

    /** Other names, each with its regions. */
    static String names(List<OtherName> names, String between) {
        return names.stream().map(CatalogueText::name).collect(Collectors.joining(between));
    }

    private static String name(OtherName name) {
        String regions = name.regions().isEmpty() ? "" : " (" + String.join(", ", name.regions()) + ")";
        return Visible.text(name.name().text() + regions);
    }

    /** Sources with how sure they are, a line each. */
    static String sources(List<Source> sources) {
        return sources.stream()
                .map(source -> "  " + Visible.text(source.name().text()) + ", "
                        + source.kind().words() + ": " + Visible.text(source.citation()) + "\n")
                .collect(Collectors.joining());
    }
}
