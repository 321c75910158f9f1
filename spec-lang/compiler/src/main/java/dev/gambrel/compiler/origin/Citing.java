package dev.gambrel.compiler.origin;

import dev.gambrel.compiler.meaning.Located;
import dev.gambrel.compiler.syntax.Clause;
import dev.gambrel.compiler.syntax.Statement.Declaration;
import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.text.SourceText;
import dev.gambrel.text.Span;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.Source;
import java.util.List;
import java.util.stream.Stream;

/** Words in a file together with the sources that their line cites for them. */
final class Citing {
    private final CutTree tree;
    private final WrittenLines lines;

    Citing(CutTree tree, WrittenLines lines) {
        this.tree = tree;
        this.lines = lines;
    }

    Origin origin(Located located, Span span, Aspect aspect) {
        return origin(located, span, aspect, lines.replacedBy(span));
    }

    private Origin origin(Located located, Span span, Aspect aspect, List<Span> replaced) {
        List<Origin> revised = replaced.stream()
                .map(earlier -> new Origin(located.report().at(earlier), List.of(), List.of()))
                .toList();
        return new Origin(located.report().at(span), sources(located, span, aspect), revised);
    }

    /** All that a line says after its keyword; of a line that a revision changed, what the revision says. */
    Origin whole(Located located, Aspect aspect) {
        Span said = said(located);
        Span line = located.line().span();
        List<Span> changed = located.line().clauses().stream()
                .map(Clause::span)
                .filter(span -> !line.cover(span).equals(line))
                .toList();
        return changed.isEmpty()
                ? origin(located, said, aspect, List.of())
                : origin(located, together(changed, located), aspect, List.of(said));
    }

    /** What one revision says of a line. */
    private static Span together(List<Span> changed, Located located) {
        SourceText text = located.report().at(changed.get(0)).text();
        return changed.stream()
                .filter(span -> located.report().at(span).text().equals(text))
                .reduce(changed.get(0), Span::cover);
    }

    private static Span said(Located located) {
        Declaration line = located.line();
        int start = line.span().start();
        String words = located.report().slice(line.span()).stripTrailing();
        int said = line.keywordSpan().end() - start;
        while (said < words.length() && Character.isWhitespace(words.charAt(said))) {
            said++;
        }
        return said < words.length() ? new Span(start + said, start + words.length()) : line.keywordSpan();
    }

    /** A source line rests on what it declares. */
    Origin declared(Located located) {
        Span head = located.line().head();
        return new Origin(
                located.report().at(head), source(located.line().name()).toList(), List.of());
    }

    /** Only figures rest on sources; one that is cited stands for itself. */
    private List<Source> sources(Located located, Span span, Aspect aspect) {
        Stream<Clause.Cites> cited = located.line().clauses().stream()
                .filter(clause -> clause instanceof Clause.Cites)
                .map(Clause.Cites.class::cast);
        return switch (aspect) {
            case SHARE, DERIVED_SHARE, STEP, REFERENCE, SPECIES, ESTIMATE ->
                cited.flatMap(cites -> source(cites.name().text())).toList();
            case SOURCE ->
                cited.filter(cites -> cites.span().equals(span))
                        .flatMap(cites -> source(cites.name().text()))
                        .toList();
            default -> List.of();
        };
    }

    private Stream<Source> source(TradeName name) {
        return tree.source(name).stream();
    }
}
