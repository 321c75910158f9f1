package dev.gambrel.compiler.origin;

import dev.gambrel.compiler.meaning.Located;
import dev.gambrel.compiler.syntax.Clause;
import dev.gambrel.compiler.syntax.EstimateClause;
import dev.gambrel.compiler.syntax.Keyword;
import dev.gambrel.compiler.syntax.Statement.Declaration;
import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.text.SourceText;
import dev.gambrel.text.Span;
import dev.gambrel.tree.CutTree;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;

/**
 * Where each value of a tree is written, and what it rests on. Immutable.
 *
 * <p>The empty path is the carcass. Of it STREAM, LEAN, SOURCE, STEP and NOTE are the streams, what is said of their lean,
 * the sources, the steps between bases and the notes at the top; GRADE, MEASURE and ESTIMATE are those lines as a whole.
 * The ESTIMATE of a part is the equation that gives its share. The target of a portion is its SHARE, and the stream of its
 * remainder its STREAM.
 */
public final class Origins {
    private final WrittenLines lines;
    private final PartLines parts;
    private final SpeciesOrigins species;
    private final Citing citing;

    /**
     * The origins of what stands in a tree: O(lines).
     *
     * @param tree a tree that keeps the rules
     * @param lines the lines that it was made from
     */
    public Origins(CutTree tree, WrittenLines lines) {
        this.lines = lines;
        this.citing = new Citing(tree, lines);
        this.parts = new PartLines(lines.parts());
        this.species = SpeciesOrigins.of(tree, lines.all(Keyword.SPECIES_LINE), citing);
    }

    /**
     * Where the first or only value of an aspect comes from.
     *
     * @param path a part, a portion, or the carcass
     * @param aspect what about it
     * @return its origin; nothing if there is no such part or nothing is stated of it
     */
    public Optional<Origin> of(TreePath path, Aspect aspect) {
        return all(path, aspect).stream().findFirst();
    }

    /**
     * Where all values of an aspect come from.
     *
     * @param path a part, a portion, or the carcass
     * @param aspect what about it
     * @return an origin for each value that is stated, in the order of the tree
     */
    public List<Origin> all(TreePath path, Aspect aspect) {
        boolean atTop = path.equals(TreePath.ROOT);
        List<Located> declaring = atTop ? declaring(aspect) : parts.at(path);
        List<Origin> found = new ArrayList<>();
        for (Located located : declaring) {
            found.addAll(atTop ? topOrigins(located, aspect) : partOrigins(located, aspect));
        }
        return found;
    }

    /**
     * What is known of the animal: counts, published figures, reference numbers.
     *
     * @return their origins
     */
    public SpeciesOrigins species() {
        return species;
    }

    /**
     * Where the share of a part would be written anew.
     *
     * @param path a part
     * @return its line; nothing for a rest, a portion or a way, which state no share
     */
    public Optional<ShareLine> shareLine(TreePath path) {
        return parts.at(path).stream()
                .flatMap(located -> ShareLines.of(located, path.parent()).stream())
                .findFirst();
    }

    /**
     * Where in a file another source would be declared: at the end of the line after which it stands.
     *
     * @param text one of the texts
     * @return the end of its last source line, or else of its line about the carcass or of its title; nothing if it has none of these
     */
    public OptionalInt endOfSources(SourceText text) {
        return Stream.of(lines.all(Keyword.SOURCE_LINE), lines.all(Keyword.CARCASS_LINE), lines.titles())
                .map(kind -> kind.stream()
                        .map(Origins::written)
                        .filter(place -> place.text().equals(text))
                        .mapToInt(place -> place.span().end())
                        .max())
                .filter(OptionalInt::isPresent)
                .findFirst()
                .map(end -> OptionalInt.of(
                        text.line(text.position(end.getAsInt()).line()).end()))
                .orElse(OptionalInt.empty());
    }

    /** A line without what ends it. */
    private static Place.InText written(Located located) {
        Place.InText place = located.report().at(located.line().span());
        int length = place.text().slice(place.span()).stripTrailing().length();
        return new Place.InText(
                place.text(), new Span(place.span().start(), place.span().start() + length));
    }

    private List<Origin> topOrigins(Located located, Aspect aspect) {
        Declaration line = located.line();
        return switch (aspect) {
            case SOURCE -> List.of(citing.declared(located));
            case NAME -> origins(located, AspectSpans.spans(line, Clause.Basis.class), aspect);
            case TITLE, STREAM, NOTE, ALLOWANCE, GRADE, MEASURE, ESTIMATE -> List.of(citing.whole(located, aspect));
            case SUPPLY -> origins(located, SupplySpans.of(line), aspect);
            default -> origins(located, AspectSpans.candidates(line, aspect), aspect);
        };
    }

    private List<Origin> partOrigins(Located located, Aspect aspect) {
        return switch (aspect) {
            case REFERENCE -> whole(located, Keyword.REFERENCE_LINE, aspect).toList();
            case NOTE -> whole(located, Keyword.NOTE_LINE, aspect).toList();
            case ALLOWANCE -> whole(located, Keyword.ALLOW_LINE, aspect).toList();
            case SEPARATION ->
                Stream.concat(
                                origins(located, AspectSpans.spans(located.line(), Clause.Ribs.class), aspect).stream(),
                                whole(located, Keyword.SEPARATE_LINE, aspect))
                        .toList();
            case ESTIMATE -> estimating(located);
            case SUPPLY -> origins(located, SupplySpans.within(located.line()), aspect);
            case SPECIES, STEP, TITLE, DRESSING -> List.of();
            default -> origins(located, AspectSpans.candidates(located.line(), aspect), aspect);
        };
    }

    /** The equation that gives the share of a part, where it is declared. */
    private List<Origin> estimating(Located part) {
        return part.line().clauses().stream()
                .filter(clause -> clause instanceof EstimateClause.EstimatedBy)
                .map(clause -> ((EstimateClause.EstimatedBy) clause).estimate().text())
                .flatMap(estimate -> lines.all(Keyword.ESTIMATE_LINE).stream()
                        .filter(line -> line.line().name().equals(estimate)))
                .map(line -> citing.whole(line, Aspect.ESTIMATE))
                .toList();
    }

    private List<Origin> origins(Located located, List<Span> spans, Aspect aspect) {
        return spans.stream().map(span -> citing.origin(located, span, aspect)).toList();
    }

    private Stream<Origin> whole(Located located, Keyword keyword, Aspect aspect) {
        return AspectSpans.body(located.line(), keyword)
                .map(inner -> citing.whole(new Located(inner, located.report()), aspect));
    }

    /** Of what is allowed, the carcass has only what is allowed at the top. */
    private List<Located> declaring(Aspect aspect) {
        return aspect == Aspect.ALLOWANCE ? lines.all(Keyword.ALLOW_LINE) : top(aspect);
    }

    private List<Located> top(Aspect aspect) {
        return switch (aspect) {
            case STREAM, LEAN -> lines.all(Keyword.STREAM_LINE);
            case SOURCE -> lines.all(Keyword.SOURCE_LINE);
            case SPECIES -> species.lines();
            case TITLE -> lines.titles();
            case SUPPLY -> lines.terms();
            case NOTE -> lines.all(Keyword.NOTE_LINE);
            case STEP -> lines.steps();
            case ALLOWANCE -> lines.allowances();
            case GRADE -> lines.all(Keyword.GRADE_LINE);
            case MEASURE -> lines.all(Keyword.MEASURE_LINE);
            case ESTIMATE -> lines.all(Keyword.ESTIMATE_LINE);
            default -> lines.all(Keyword.CARCASS_LINE);
        };
    }

    /**
     * The same place with its text, or as it is if it is written nowhere.
     *
     * @param place any place
     * @return the place to show
     */
    public Place written(Place place) {
        if (!(place instanceof Place.InTree tree)) {
            return place;
        }
        if (tree.aspect() == Aspect.TERM) {
            return inEstimate(tree);
        }
        boolean atTop = tree.path().equals(TreePath.ROOT) || tree.aspect() == Aspect.ALLOWANCE;
        return atTop ? atTop(tree) : inBody(tree);
    }

    private Place inEstimate(Place.InTree tree) {
        return lines.all(Keyword.ESTIMATE_LINE).stream()
                .filter(line -> TreePath.ROOT.then(line.line().name()).equals(tree.path()))
                .findFirst()
                .map(line -> located(tree, line, Aspect.TERM, tree.index()))
                .orElse(tree);
    }

    private Place inBody(Place.InTree tree) {
        List<Located> found = parts.at(tree.path());
        if (found.isEmpty()) {
            return tree;
        }
        boolean nthLine = tree.aspect() == Aspect.NAME && tree.index() < found.size();
        Located located = found.get(nthLine ? tree.index() : 0);
        int index = nthLine ? 0 : tree.index();
        return located(tree, located, tree.aspect(), index);
    }

    private Place atTop(Place.InTree tree) {
        List<Located> found = top(tree.aspect());
        if (found.isEmpty()) {
            return tree;
        }
        if (tree.aspect() == Aspect.SUPPLY) {
            return supply(tree, found);
        }
        boolean counted = tree.index() < found.size();
        Located located = found.get(counted ? tree.index() : 0);
        boolean byName = tree.aspect() == Aspect.STREAM || tree.aspect() == Aspect.SOURCE;
        return located(tree, located, byName ? Aspect.NAME : tree.aspect(), 0);
    }

    /** A line may lay down several terms. */
    private static Place supply(Place.InTree tree, List<Located> lines) {
        int before = 0;
        for (Located located : lines) {
            List<Span> spans = SupplySpans.of(located.line());
            if (tree.index() < before + spans.size()) {
                return new Place.Written(tree, located.report().at(spans.get(tree.index() - before)));
            }
            before += spans.size();
        }
        return tree;
    }

    private static Place located(Place.InTree tree, Located located, Aspect aspect, int index) {
        return new Place.Written(tree, located.report().at(AspectSpans.of(located.line(), aspect, index)));
    }
}
