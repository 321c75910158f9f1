package dev.gambrel.compiler.lower;

import dev.gambrel.compiler.meaning.Clauses;
import dev.gambrel.compiler.meaning.FigureReader;
import dev.gambrel.compiler.meaning.JoinedNames;
import dev.gambrel.compiler.meaning.Located;
import dev.gambrel.compiler.parse.FileReport;
import dev.gambrel.compiler.syntax.Clause;
import dev.gambrel.compiler.syntax.Figure;
import dev.gambrel.quantity.Dimension;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.Source;
import dev.gambrel.tree.Stream;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Stream and source lines. */
final class StreamLowering {
    private StreamLowering() {}

    /** The stream; one whose kind was not said is taken as waste after the finding. */
    static Stream stream(Located located) {
        Clauses clauses = new Clauses(located);
        TradeName name = PartLowering.name(located.line());
        Optional<Stream.Kind> swallowed = kindAtTheEndOf(name);
        Stream.Kind kind = clauses.required(Clause.Kind.class, "what becomes of it", whatToWrite(name, swallowed))
                .map(Clause.Kind::kind)
                .orElse(swallowed.orElse(Stream.Kind.WASTE));
        Stream.Lean lean = clauses.one(Clause.Lean.class, "how lean it is", StreamLowering::isOneFigure)
                .map(clause -> lean(clause, located.report()))
                .orElse(new Stream.Lean.NotStated());
        List<TradeName> onlyFrom = clauses.one(Clause.OnlyFrom.class, "what it comes from")
                .map(clause -> JoinedNames.of(clause.cuts().text()))
                .orElse(List.of());
        clauses.finish();
        return new Stream(swallowed.map(word -> withoutKind(name, word)).orElse(name), kind, lean, onlyFrom);
    }

    /** Without its comma, "mince saleable" is read as a name. */
    private static Optional<Stream.Kind> kindAtTheEndOf(TradeName name) {
        return Arrays.stream(Stream.Kind.values())
                .filter(kind -> name.key().endsWith(" " + kind.words()))
                .findFirst();
    }

    private static TradeName withoutKind(TradeName name, Stream.Kind kind) {
        return TradeName.of(
                name.text()
                        .substring(
                                0,
                                Math.max(0, name.text().length() - kind.words().length())),
                name);
    }

    private static String whatToWrite(TradeName name, Optional<Stream.Kind> swallowed) {
        return swallowed
                .map(kind -> "Put a comma before it: stream " + withoutKind(name, kind) + ", " + kind.words())
                .orElse("Write saleable, by-product or waste after the name.");
    }

    /** A stream is meant to be so lean: that strays from nothing. */
    private static boolean isOneFigure(Clause.Lean clause) {
        return clause.figure().more() instanceof Figure.More.Nothing;
    }

    private static Stream.Lean lean(Clause.Lean clause, FileReport report) {
        return new FigureReader(report)
                .quantity(clause.figure().amount(), Dimension.SHARE)
                .<Stream.Lean>map(percent -> new Stream.Lean.Stated(percent, clause.judged()))
                .orElse(new Stream.Lean.NotStated());
    }

    static Source source(Located located) {
        Clauses clauses = new Clauses(located);
        Clause.Citation citation = clauses.required(
                        Clause.Citation.class,
                        "how sure it is and where it is found",
                        "Write one of published, measured, common practice, judgement or memory, and words in quotation marks.")
                .orElse(new Clause.Citation(
                        Source.Kind.MEMORY, "", located.line().head()));
        clauses.finish();
        return new Source(PartLowering.name(located.line()), citation.kind(), citation.citation());
    }
}
