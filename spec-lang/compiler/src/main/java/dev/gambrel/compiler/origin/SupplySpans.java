package dev.gambrel.compiler.origin;

import dev.gambrel.compiler.syntax.Clause;
import dev.gambrel.compiler.syntax.Name;
import dev.gambrel.compiler.syntax.PortionClause;
import dev.gambrel.compiler.syntax.Statement.Declaration;
import dev.gambrel.compiler.syntax.TermClause;
import dev.gambrel.text.Span;
import java.util.List;
import java.util.stream.Stream;

/** Where each term of supply stands, in the order in which the tree holds them. */
final class SupplySpans {
    private SupplySpans() {}

    /** Of all the lines in the braces of a cut. */
    static List<Span> within(Declaration cut) {
        return cut.body().stream()
                .filter(statement -> statement instanceof Declaration)
                .map(Declaration.class::cast)
                .filter(line -> line.keyword().isOfSupply())
                .flatMap(line -> of(line).stream())
                .toList();
    }

    /** Of one line: one place for each term. */
    static List<Span> of(Declaration line) {
        return switch (line.keyword()) {
            case CLAIM_LINE, LABEL_LINE -> line.names().stream().map(Name::span).toList();
            case KEEP_LINE ->
                Stream.concat(spans(line, Clause.Words.class), spans(line, TermClause.Limited.class))
                        .toList();
            case PACK_LINE ->
                Stream.concat(spans(line, PortionClause.Packed.class), spans(line, TermClause.PackedIn.class))
                        .toList();
            default -> spans(line, TermClause.Limited.class).toList();
        };
    }

    private static Stream<Span> spans(Declaration line, Class<? extends Clause> kind) {
        return AspectSpans.spans(line, kind).stream();
    }
}
