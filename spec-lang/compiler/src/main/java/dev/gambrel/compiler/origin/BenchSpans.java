package dev.gambrel.compiler.origin;

import dev.gambrel.compiler.syntax.BenchClause;
import dev.gambrel.compiler.syntax.Clause;
import dev.gambrel.compiler.syntax.Keyword;
import dev.gambrel.compiler.syntax.PortionClause;
import dev.gambrel.compiler.syntax.Statement.Declaration;
import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.text.Span;
import java.util.List;
import java.util.stream.Stream;

/** Which words of a line a finding about portions or the bench underlines. */
final class BenchSpans {
    private BenchSpans() {}

    static List<Span> candidates(Declaration line, Aspect aspect) {
        return switch (aspect) {
            case THICKNESS -> AspectSpans.spans(line, PortionClause.Thick.class);
            case THICKNESS_LIMIT -> both(AspectSpans.spans(line, PortionClause.ThickBetween.class), bounds(line, true));
            case PRECEDENCE -> AspectSpans.spans(line, PortionClause.Rules.class);
            case NUMBER -> AspectSpans.spans(line, PortionClause.Into.class);
            case FEWEST -> AspectSpans.spans(line, PortionClause.BoundFrom.class);
            case KERF -> AspectSpans.spans(line, PortionClause.Kerf.class);
            case LENGTH -> AspectSpans.spans(line, PortionClause.Length.class);
            case SMALLEST -> AspectSpans.spans(line, PortionClause.Smallest.class);
            case END_PIECES -> AspectSpans.spans(line, PortionClause.EndPieces.class);
            case BINDING ->
                both(
                        AspectSpans.spans(line, PortionClause.Tied.class),
                        AspectSpans.spans(line, PortionClause.Held.class));
            case PACK -> AspectSpans.spans(line, PortionClause.Packed.class);
            case TARE -> AspectSpans.spans(line, PortionClause.Tare.class);
            case MATCHING -> AspectSpans.spans(line, BenchClause.Matched.class);
            case RIB_COUNT -> AspectSpans.spans(line, BenchClause.RibCount.class);
            case TURN -> AspectSpans.spans(line, BenchClause.After.class);
            case TREATMENT -> treatments(line);
            default -> List.of();
        };
    }

    /** Limits on weight, and on the fat of a trim. */
    static List<Span> limits(Declaration line) {
        List<Span> accepted = both(AspectSpans.spans(line, Clause.Between.class), bounds(line, false));
        return both(accepted, AspectSpans.spans(line, Clause.FatLimit.class));
    }

    private static List<Span> bounds(Declaration line, boolean thick) {
        return line.clauses().stream()
                .filter(clause -> clause instanceof PortionClause.Bound bound && bound.thick() == thick)
                .map(Clause::span)
                .toList();
    }

    private static List<Span> treatments(Declaration line) {
        return line.body().stream()
                .filter(statement -> statement instanceof Declaration)
                .map(Declaration.class::cast)
                .filter(inner -> inner.keyword() == Keyword.SCORE_LINE || inner.keyword() == Keyword.LEAVE_LINE)
                .map(Declaration::head)
                .toList();
    }

    private static List<Span> both(List<Span> first, List<Span> second) {
        return Stream.concat(first.stream(), second.stream()).toList();
    }
}
