package dev.gambrel.compiler.origin;

import dev.gambrel.compiler.meaning.Located;
import dev.gambrel.compiler.syntax.Clause;
import dev.gambrel.compiler.syntax.Keyword;
import dev.gambrel.compiler.syntax.Statement;
import dev.gambrel.compiler.syntax.Statement.Declaration;
import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.anatomy.SpineRegion;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Where what is known of the animal of a specification comes from. Immutable. */
public final class SpeciesOrigins {
    /**
     * Where what is known of a piece comes from.
     *
     * @param name the piece by the name that the species gives it
     * @param origin the line that declares it
     * @param published an origin for each published share
     * @param references an origin for each number in a published scheme
     */
    public record PieceOrigin(TradeName name, Origin origin, List<Origin> published, List<Origin> references) {
        /** Copies the lists. */
        public PieceOrigin {
            published = List.copyOf(published);
            references = List.copyOf(references);
        }
    }

    private final List<Located> species;
    private final Citing citing;
    private final Map<TradeName, List<Located>> pieces = new HashMap<>();

    private SpeciesOrigins(List<Located> species, Citing citing) {
        this.species = species;
        this.citing = citing;
        species.forEach(this::addPieces);
    }

    static SpeciesOrigins of(CutTree tree, List<Located> declared, Citing citing) {
        List<Located> species = declared.stream()
                .filter(line -> line.line().name().equals(tree.species().name()))
                .limit(1)
                .toList();
        return new SpeciesOrigins(species, citing);
    }

    List<Located> lines() {
        return species;
    }

    private void addPieces(Located above) {
        for (Statement statement : above.line().body()) {
            if (statement instanceof Declaration line && line.keyword() == Keyword.PIECE_LINE) {
                Located piece = new Located(line, above.report());
                names(line)
                        .forEach(name -> pieces.computeIfAbsent(name, n -> new ArrayList<>(1))
                                .add(piece));
                addPieces(piece);
            }
        }
    }

    private static List<TradeName> names(Declaration piece) {
        List<TradeName> names = new ArrayList<>(List.of(piece.name()));
        for (Clause clause : piece.clauses()) {
            if (clause instanceof Clause.Also also
                    && !names.contains(also.name().text())) {
                names.add(also.name().text());
            }
        }
        return names;
    }

    /**
     * Where what is known of a piece comes from.
     *
     * @param name its name, or one that it has elsewhere
     * @return the piece; several if the name means several, none if the animal has no such piece
     */
    public List<PieceOrigin> pieces(TradeName name) {
        return pieces.getOrDefault(name, List.of()).stream().map(this::piece).toList();
    }

    private PieceOrigin piece(Located piece) {
        return new PieceOrigin(
                piece.line().name(),
                citing.origin(piece, piece.line().head(), Aspect.NAME),
                whole(piece, Keyword.PUBLISHED_LINE, Aspect.SHARE),
                whole(piece, Keyword.REFERENCE_LINE, Aspect.REFERENCE));
    }

    /**
     * Where the number of ribs comes from.
     *
     * @return its origin, or nothing if it is not stated
     */
    public Optional<Origin> ribs() {
        return species.stream()
                .flatMap(line -> whole(line, Keyword.RIBS_LINE, Aspect.SPECIES).stream())
                .reduce((first, last) -> last);
    }

    /**
     * Where the number of vertebrae of a region comes from.
     *
     * @param region the region
     * @return its origin, or nothing if it is not stated
     */
    public Optional<Origin> vertebrae(SpineRegion region) {
        return species.stream()
                .flatMap(line -> AspectSpans.body(line.line(), Keyword.VERTEBRAE_LINE)
                        .filter(inner -> isOf(inner, region))
                        .map(inner -> citing.whole(new Located(inner, line.report()), Aspect.SPECIES)))
                .reduce((first, last) -> last);
    }

    private static boolean isOf(Declaration line, SpineRegion region) {
        return line.clauses().stream()
                .anyMatch(clause -> clause instanceof Clause.Region written
                        && written.word().equalsIgnoreCase(region.words()));
    }

    private List<Origin> whole(Located above, Keyword keyword, Aspect aspect) {
        return AspectSpans.body(above.line(), keyword)
                .map(inner -> citing.whole(new Located(inner, above.report()), aspect))
                .toList();
    }
}
