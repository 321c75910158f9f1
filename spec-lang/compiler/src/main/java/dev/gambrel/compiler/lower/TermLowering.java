package dev.gambrel.compiler.lower;

import dev.gambrel.compiler.meaning.Clauses;
import dev.gambrel.compiler.meaning.FigureReader;
import dev.gambrel.compiler.meaning.Located;
import dev.gambrel.compiler.syntax.Amount;
import dev.gambrel.compiler.syntax.Clause;
import dev.gambrel.compiler.syntax.Name;
import dev.gambrel.compiler.syntax.PortionClause;
import dev.gambrel.compiler.syntax.TermClause;
import dev.gambrel.quantity.Dimension;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.portion.Limit;
import dev.gambrel.tree.portion.Outside;
import dev.gambrel.tree.term.Judged;
import dev.gambrel.tree.term.Refrigeration;
import dev.gambrel.tree.term.Term;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Lines about supply: weight, thickness, lean, cold, age, life, pack, claims, labels. */
final class TermLowering {
    private final Located located;
    private final Clauses clauses;
    private final FigureReader figures;

    private TermLowering(Located located) {
        this.located = located;
        this.clauses = new Clauses(located);
        this.figures = new FigureReader(located.report());
    }

    /** What a line lays down; more than one term where it says how something is kept or lists several names. */
    static List<Term> terms(Located located) {
        TermLowering line = new TermLowering(located);
        List<Term> terms = line.terms();
        line.clauses.finish();
        return terms;
    }

    private List<Term> terms() {
        return switch (located.line().keyword()) {
            case WEIGHT_LINE -> limited(Dimension.WEIGHT, written -> new Term.Weight(written.limit, outside()));
            case THICKNESS_LINE -> limited(Dimension.LENGTH, written -> new Term.Thickness(written.limit, outside()));
            case LEAN_LINE -> limited(Dimension.SHARE, written -> new Term.Lean(written.limit, written.judged()));
            case KEEP_LINE -> kept();
            case AGE_LINE -> aged();
            case LIFE_LINE -> limited(Dimension.TIME, written -> new Term.Life(written.limit));
            case PACK_LINE -> packed();
            case CLAIM_LINE -> named(Term.Claim::new);
            case LABEL_LINE -> named(Term.Label::new);
            default -> List.of();
        };
    }

    /**
     * A limit as read.
     *
     * @param limit the limit
     * @param end what stands after it
     */
    private record Written(Limit limit, TermClause.End end) {
        Judged judged() {
            return end.is("visual") ? Judged.VISUAL : end.is("chemical") ? Judged.CHEMICAL : Judged.NOT_STATED;
        }

        String named(String word) {
            return end.is(word) && !end.names().isEmpty()
                    ? withoutArticle(end.names().get(0))
                    : "";
        }
    }

    private List<Term> limited(Dimension dimension, Function<Written, Term> term) {
        return clauses
                .required(TermClause.Limited.class, "what is accepted", "Write it as in: " + form())
                .flatMap(said -> written(said, dimension))
                .map(term)
                .stream()
                .toList();
    }

    private String form() {
        return located.line().keyword().form();
    }

    private Optional<Written> written(TermClause.Limited said, Dimension dimension) {
        return limit(said, dimension).map(limit -> new Written(limit, said.end()));
    }

    private Optional<Limit> limit(TermClause.Limited said, Dimension dimension) {
        Amount first = said.amounts().get(0);
        return switch (said.kind()) {
            case BETWEEN ->
                figures.both(first, said.amounts().get(1), dimension)
                        .map(ends -> new Limit.Between(ends.get(0), ends.get(1)));
            case AT_LEAST -> figures.quantity(first, dimension).map(Limit.AtLeast::new);
            case AT_MOST -> figures.quantity(first, dimension).map(Limit.AtMost::new);
            case EXACTLY -> figures.quantity(first, dimension).map(only -> new Limit.Between(only, only));
        };
    }

    private Outside outside() {
        return OutsideReader.take(clauses, located.report());
    }

    private List<Term> kept() {
        List<Term> terms = new ArrayList<>(2);
        for (Refrigeration state : Refrigeration.values()) {
            clauses.one(
                            Clause.Words.class,
                            "whether it is frozen",
                            said -> said.words().equalsIgnoreCase(state.words()))
                    .ifPresent(said -> terms.add(new Term.Refrigerated(state)));
        }
        if (terms.isEmpty()) {
            return limited(Dimension.TEMPERATURE, TermLowering::temperature);
        }
        clauses.one(TermClause.Limited.class, "how cold it is kept")
                .flatMap(said -> written(said, Dimension.TEMPERATURE))
                .map(TermLowering::temperature)
                .ifPresent(terms::add);
        return terms;
    }

    private static Term temperature(Written written) {
        return new Term.Temperature(written.limit, written.named("at"));
    }

    private List<Term> aged() {
        List<String> manner = clauses.all(Clause.Words.class).stream()
                .map(Clause.Words::words)
                .toList();
        return limited(
                Dimension.TIME,
                written -> new Term.Age(written.limit, String.join(", ", manner), written.named("from")));
    }

    private List<Term> packed() {
        Optional<Term> counted = clauses.one(PortionClause.Packed.class, "what it is packed in")
                .flatMap(said -> figures.count(said.number(), said.span(), 1, FinishReader.MOST)
                        .map(number -> new Term.Pack(
                                number,
                                TradeName.of(
                                        withoutArticle(said.container()),
                                        said.container().text()))));
        return counted
                .or(() -> clauses.one(TermClause.PackedIn.class, "what it is packed in")
                        .map(said -> new Term.Pack(
                                0,
                                TradeName.of(
                                        withoutArticle(said.container()),
                                        said.container().text()))))
                .stream()
                .toList();
    }

    private List<Term> named(Function<TradeName, Term> term) {
        return located.line().names().stream().map(Name::text).map(term).toList();
    }

    /** "the centre" is the centre, and "a vacuum bag" a vacuum bag. */
    private static String withoutArticle(Name written) {
        String text = written.text().text();
        String key = written.text().key();
        for (String article : List.of("a ", "the ")) {
            if (key.startsWith(article)) {
                return text.substring(article.length()).strip();
            }
        }
        return text;
    }
}
