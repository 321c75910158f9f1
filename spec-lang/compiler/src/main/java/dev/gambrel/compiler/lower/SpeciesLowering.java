package dev.gambrel.compiler.lower;

import dev.gambrel.compiler.meaning.Citations;
import dev.gambrel.compiler.meaning.Clauses;
import dev.gambrel.compiler.meaning.FigureReader;
import dev.gambrel.compiler.meaning.Located;
import dev.gambrel.compiler.meaning.OtherNames;
import dev.gambrel.compiler.meaning.References;
import dev.gambrel.compiler.meaning.SpineRegions;
import dev.gambrel.compiler.parse.FileReport;
import dev.gambrel.compiler.syntax.Clause;
import dev.gambrel.compiler.syntax.Container;
import dev.gambrel.compiler.syntax.Statement;
import dev.gambrel.compiler.syntax.Statement.Declaration;
import dev.gambrel.quantity.Dimension;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.anatomy.AnatomicalCount;
import dev.gambrel.tree.anatomy.OtherName;
import dev.gambrel.tree.anatomy.Piece;
import dev.gambrel.tree.anatomy.PieceCount;
import dev.gambrel.tree.anatomy.Reference;
import dev.gambrel.tree.anatomy.Species;
import dev.gambrel.tree.anatomy.SpineRegion;
import dev.gambrel.tree.inspection.TreeCode;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A species line and its braces: counts, pieces, what lies in them and what print says of them. */
final class SpeciesLowering {
    private static final int MOST_BONES = 99;

    private final FileReport report;
    private final FigureReader figures;
    private AnatomicalCount ribs = AnatomicalCount.NOT_STATED;
    private final Map<SpineRegion, AnatomicalCount> vertebrae = new EnumMap<>(SpineRegion.class);

    private SpeciesLowering(FileReport report) {
        this.report = report;
        this.figures = new FigureReader(report);
    }

    static Species lower(Located located) {
        return new SpeciesLowering(located.report()).species(located);
    }

    private Species species(Located located) {
        Clauses clauses = new Clauses(located);
        List<OtherName> others = OtherNames.take(clauses);
        clauses.finish();
        List<Piece> pieces = new ArrayList<>();
        for (Declaration line : lines(located.line().body(), Container.SPECIES)) {
            switch (line.keyword()) {
                case RIBS_LINE -> ribs = count(line).orElse(ribs);
                case VERTEBRAE_LINE -> vertebrae(line);
                default -> pieces.add(piece(line));
            }
        }
        return new Species(PartLowering.name(located.line()), others, ribs, vertebrae, pieces);
    }

    private List<Declaration> lines(List<Statement> body, Container container) {
        return body.stream()
                .filter(statement -> statement instanceof Declaration)
                .map(Declaration.class::cast)
                .filter(line -> Placement.fits(line, container, report))
                .toList();
    }

    private Optional<AnatomicalCount> count(Declaration line) {
        Clauses clauses = new Clauses(new Located(line, report));
        clauses.all(Clause.Region.class);
        List<TradeName> sources = Citations.take(clauses);
        Optional<Clause.Numbers> numbers = clauses.one(Clause.Numbers.class, "how many");
        clauses.finish();
        return numbers.flatMap(written -> count(written, sources));
    }

    private Optional<AnatomicalCount> count(Clause.Numbers written, List<TradeName> sources) {
        Optional<Integer> least = figures.count(written.first(), written.span(), 1, MOST_BONES);
        Optional<Integer> most = figures.count(written.last(), written.span(), 1, MOST_BONES);
        if (least.isEmpty() || most.isEmpty()) {
            return Optional.empty();
        }
        if (least.get() > most.get()) {
            report.add(report.finding(TreeCode.REVERSED_RANGE, written.span())
                    .with("low", least.get())
                    .with("high", most.get())
                    .help("Write the smaller count first."));
            return Optional.empty();
        }
        return Optional.of(new AnatomicalCount(least.get(), most.get(), sources));
    }

    private void vertebrae(Declaration line) {
        for (Clause clause : line.clauses()) {
            if (clause instanceof Clause.Region written) {
                Optional<SpineRegion> region = SpineRegions.read(written.word(), written.span(), report);
                if (region.isPresent()) {
                    count(line).ifPresent(count -> vertebrae.put(region.get(), count));
                }
            }
        }
    }

    private Piece piece(Declaration line) {
        Clauses clauses = new Clauses(new Located(line, report));
        PieceCount count = clauses.one(Clause.Count.class, "how many there are")
                .map(Clause.Count::count)
                .orElse(PieceCount.NOT_STATED);
        List<OtherName> others = OtherNames.take(clauses);
        clauses.finish();
        PieceBody body = new PieceBody();
        for (Declaration inner : lines(line.body(), Container.PIECE)) {
            switch (inner.keyword()) {
                case BONE_LINE -> body.bones.add(structure(inner));
                case MUSCLE_LINE -> body.muscles.add(structure(inner));
                case GLAND_LINE -> body.glands.add(structure(inner));
                case REFERENCE_LINE ->
                    References.read(new Located(inner, report)).ifPresent(body.references::add);
                case PUBLISHED_LINE -> published(inner).ifPresent(body.published::add);
                default -> body.parts.add(piece(inner));
            }
        }
        Piece.Anatomy anatomy = new Piece.Anatomy(body.bones, body.muscles, body.glands);
        return new Piece(PartLowering.name(line), others, count, anatomy, body.published, body.references, body.parts);
    }

    private Piece.Structure structure(Declaration line) {
        Clauses clauses = new Clauses(new Located(line, report));
        List<OtherName> others = OtherNames.take(clauses);
        clauses.finish();
        return new Piece.Structure(PartLowering.name(line), others);
    }

    private Optional<Piece.Published> published(Declaration line) {
        Clauses clauses = new Clauses(new Located(line, report));
        Optional<Clause.Figures> figure = clauses.required(
                Clause.Figures.class, "a figure", "Write it with what it is a share of: published 32 % of carcass");
        List<TradeName> sources = Citations.take(clauses);
        clauses.finish();
        return figure.flatMap(f -> figures.expected(f.figure(), Dimension.SHARE)
                .map(expected -> new Piece.Published(
                        expected,
                        f.figure().of().isEmpty()
                                ? TradeName.of("carcass")
                                : f.figure().of().get(0).text(),
                        sources)));
    }

    /** What has been read of a piece's braces so far. */
    private static final class PieceBody {
        private final List<Piece.Structure> bones = new ArrayList<>();
        private final List<Piece.Structure> muscles = new ArrayList<>();
        private final List<Piece.Structure> glands = new ArrayList<>();
        private final List<Reference> references = new ArrayList<>();
        private final List<Piece.Published> published = new ArrayList<>();
        private final List<Piece> parts = new ArrayList<>();
    }
}
