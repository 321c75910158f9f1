package dev.gambrel.compiler.catalogue;

import dev.gambrel.compiler.Compilation;
import dev.gambrel.compiler.SpecCompiler;
import dev.gambrel.compiler.source.Catalogue;
import dev.gambrel.compiler.source.Sources;
import dev.gambrel.text.NearestName;
import dev.gambrel.text.SourceText;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.Source;
import dev.gambrel.tree.anatomy.AnatomicalCount;
import dev.gambrel.tree.anatomy.OtherName;
import dev.gambrel.tree.anatomy.Piece;
import dev.gambrel.tree.anatomy.Species;
import dev.gambrel.tree.inspection.PieceIndex;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A species of the catalogue, read and ready to be looked up. Immutable and thread-safe. Only the file of the species that is
 * asked for is read, each time anew; keep what was read.
 *
 * <pre>{@code
 * CatalogueSpecies sheep = CatalogueSpecies.named(TradeName.of("sheep")).orElseThrow();
 * sheep.cutsCalled(TradeName.of("Best End")).forEach(cut -> System.out.println(cut.shares()));
 * }</pre>
 */
public final class CatalogueSpecies {
    private static final String SHEET = """
            language 1
            use "catalogue:SPECIES"
            specification "Catalogue" revision 1 for SPECIES
            carcass cold
            stream all, saleable
            rest -> all
            """;

    private final CutTree tree;
    private final PieceIndex index;
    private final CutReader cuts;

    private CatalogueSpecies(CutTree tree) {
        this.tree = tree;
        this.index = new PieceIndex(tree.species());
        this.cuts = new CutReader(tree, index);
    }

    /**
     * The species of a name, as {@link Catalogue#species()} has it.
     *
     * @param name the name that a {@code use} line writes
     * @return the species, or nothing if the catalogue lacks it
     */
    public static Optional<CatalogueSpecies> named(TradeName name) {
        return Catalogue.species().contains(name) ? Optional.of(read(name)) : Optional.empty();
    }

    /**
     * The species of a name that it has anywhere, such as lamb for sheep. A name that is not the catalogue's own costs
     * reading species until one has it; where two have it, the earlier is given.
     *
     * @param name a name
     * @return the species, or nothing if none of the catalogue is called so
     */
    public static Optional<CatalogueSpecies> called(TradeName name) {
        return named(name)
                .or(() -> Catalogue.species().stream()
                        .map(CatalogueSpecies::read)
                        .filter(known -> known.isCalled(name))
                        .findFirst());
    }

    private static CatalogueSpecies read(TradeName name) {
        SourceText sheet = new SourceText("catalogue", SHEET.replace("SPECIES", name.key()));
        Compilation compiled = new SpecCompiler().compile(sheet, Sources.none()).orElseThrow();
        return new CatalogueSpecies(compiled.tree());
    }

    private boolean isCalled(TradeName name) {
        return species().otherNames().stream().map(OtherName::name).anyMatch(name::equals);
    }

    /**
     * The animal.
     *
     * @return its names, counts and pieces
     */
    public Species species() {
        return tree.species();
    }

    /**
     * What the figures and numbers of the species rest on.
     *
     * @return all sources, as declared
     */
    public List<Source> sources() {
        return tree.sources();
    }

    /**
     * What the counts of bones rest on, and with them the names of what lies in each piece.
     *
     * @return the sources that the counts cite
     */
    public List<Source> anatomySources() {
        return cuts.sources(Stream.concat(Stream.of(species().ribs()), species().vertebrae().values().stream())
                .map(AnatomicalCount::sources)
                .flatMap(List::stream)
                .distinct()
                .toList());
    }

    /**
     * Every piece, each before the pieces in it.
     *
     * @return the pieces, in the order of the catalogue
     */
    public List<Piece> pieces() {
        List<Piece> all = new ArrayList<>();
        species().pieces().forEach(piece -> addPieces(piece, all));
        return all;
    }

    private static void addPieces(Piece piece, List<Piece> all) {
        all.add(piece);
        piece.parts().forEach(part -> addPieces(part, all));
    }

    /**
     * The cuts of a name, whatever the region.
     *
     * @param name the name of a piece, or what it is called somewhere
     * @return one, or several if the name means different pieces in different regions, or none
     */
    public List<CatalogueCut> cutsCalled(TradeName name) {
        return index.piecesCalled(name).stream().map(cuts::read).toList();
    }

    /**
     * The name of a piece that somebody most likely meant.
     *
     * @param wanted a text that names no piece
     * @return the nearest name, if one is near
     */
    public Optional<TradeName> nearestCut(String wanted) {
        return NearestName.of(wanted, index.pieceNames());
    }
}
