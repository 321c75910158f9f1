package dev.gambrel.compiler.origin;

import dev.gambrel.compiler.meaning.Located;
import dev.gambrel.compiler.syntax.Clause;
import dev.gambrel.compiler.syntax.Statement.Declaration;
import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.text.Span;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.Source;
import java.util.List;
import java.util.stream.Stream;

/** Words in a file together with the sources that their line cites for them. */
final class Citing {
    private final CutTree tree;

    Citing(CutTree tree) {
        this.tree = tree;
    }

    Origin origin(Located located, Span span, Aspect aspect) {
        return new Origin(located.report().at(span), sources(located, span, aspect), List.of());
    }

    /** All that a line says after its keyword. */
    Origin whole(Located located, Aspect aspect) {
        Declaration line = located.line();
        String words = located.report().text().slice(line.span()).stripTrailing();
        int said = line.keywordSpan().end() - line.span().start();
        while (said < words.length() && Character.isWhitespace(words.charAt(said))) {
            said++;
        }
        int start = line.span().start();
        Span span = said < words.length() ? new Span(start + said, start + words.length()) : line.keywordSpan();
        return origin(located, span, aspect);
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
            case SHARE, DERIVED_SHARE, STEP, REFERENCE, SPECIES ->
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
