package dev.gambrel.compiler.origin;

import dev.gambrel.compiler.estimate.TermSpans;
import dev.gambrel.compiler.syntax.Clause;
import dev.gambrel.compiler.syntax.EstimateClause;
import dev.gambrel.compiler.syntax.Keyword;
import dev.gambrel.compiler.syntax.Name;
import dev.gambrel.compiler.syntax.Statement.Declaration;
import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.text.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Which words of a line a finding underlines. Where the line lacks them, its name. */
final class AspectSpans {
    private AspectSpans() {}

    static Span of(Declaration line, Aspect aspect, int index) {
        List<Span> spans = candidates(line, aspect);
        return index < spans.size() ? spans.get(index) : line.head();
    }

    /** Every place of a line that says something of an aspect. */
    static List<Span> candidates(Declaration line, Aspect aspect) {
        return switch (aspect) {
            case NAME -> List.of(line.head());
            case SHARE -> shares(line);
            case BAND -> spans(line, Clause.Figures.class);
            case DERIVED_SHARE -> figures(line, false);
            case COUNT -> spans(line, Clause.Count.class);
            case BONE_STATE -> spans(line, Clause.Bones.class);
            case CONTENTS -> contents(line);
            case SEPARATION -> separations(line);
            case STREAM ->
                Stream.concat(spans(line, Clause.Arrow.class).stream(), spans(line, Clause.Remainder.class).stream())
                        .toList();
            case LIMIT -> BenchSpans.limits(line);
            case REFERENCE ->
                body(line, Keyword.REFERENCE_LINE).map(Declaration::head).toList();
            case SOURCE -> spans(line, Clause.Cites.class);
            case STEP -> spans(line, Clause.Loss.class);
            case LEAN -> spans(line, Clause.Lean.class);
            case SPECIES, GRADE, ALLOWANCE, MEASURE, ESTIMATE -> List.of(line.head());
            case TITLE -> spans(line, Clause.Text.class);
            case DRESSING -> spans(line, Clause.Words.class);
            case OTHER_NAME -> spans(line, Clause.Also.class);
            case NOTE -> body(line, Keyword.NOTE_LINE).map(Declaration::head).toList();
            case CHOICE -> choices(line);
            case TERM -> TermSpans.of(line);
            case SUPPLY -> SupplySpans.within(line);
            default -> BenchSpans.candidates(line, aspect);
        };
    }

    static <C extends Clause> List<Span> spans(Declaration line, Class<C> kind) {
        return line.clauses().stream()
                .filter(kind::isInstance)
                .map(Clause::span)
                .toList();
    }

    private static List<Span> shares(Declaration line) {
        return Stream.concat(figures(line, true).stream(), spans(line, EstimateClause.EstimatedBy.class).stream())
                .toList();
    }

    private static List<Span> figures(Declaration line, boolean ofTheCutAbove) {
        return line.clauses().stream()
                .filter(clause -> clause instanceof Clause.Figures figures
                        && figures.figure().of().isEmpty() == ofTheCutAbove)
                .map(Clause::span)
                .toList();
    }

    private static List<Span> choices(Declaration line) {
        return Stream.concat(spans(line, Clause.Chosen.class).stream(), figures(line, true).stream())
                .toList();
    }

    private static List<Span> contents(Declaration line) {
        return body(line, Keyword.CONTAINS_LINE)
                .flatMap(inner -> inner.names().stream())
                .map(Name::span)
                .toList();
    }

    /** In the order in which the tree holds them: the ribs of the line itself first. */
    private static List<Span> separations(Declaration line) {
        List<Span> spans = new ArrayList<>(spans(line, Clause.Ribs.class));
        body(line, Keyword.SEPARATE_LINE)
                .forEach(inner -> spans.add(inner.clauses().stream()
                        .filter(clause -> clause instanceof Clause.At)
                        .map(Clause::span)
                        .findFirst()
                        .orElse(inner.head())));
        return spans;
    }

    /** The lines of one kind in its braces. */
    static Stream<Declaration> body(Declaration line, Keyword keyword) {
        return line.body().stream()
                .filter(statement -> statement instanceof Declaration)
                .map(Declaration.class::cast)
                .filter(inner -> inner.keyword() == keyword);
    }
}
