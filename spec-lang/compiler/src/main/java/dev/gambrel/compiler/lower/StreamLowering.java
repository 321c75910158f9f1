package dev.gambrel.compiler.lower;

import dev.gambrel.compiler.parse.FileReport;
import dev.gambrel.compiler.syntax.Clause;
import dev.gambrel.quantity.Dimension;
import dev.gambrel.tree.Source;
import dev.gambrel.tree.Stream;

/** Stream and source lines. */
final class StreamLowering {
    private StreamLowering() {}

    /** The stream; one whose kind was not said is taken as waste after the finding. */
    static Stream stream(Located located) {
        Clauses clauses = new Clauses(located);
        Stream.Kind kind = clauses.required(
                        Clause.Kind.class, "what becomes of it", "Write saleable, by-product or waste after the name.")
                .map(Clause.Kind::kind)
                .orElse(Stream.Kind.WASTE);
        Stream.Lean lean = clauses.one(Clause.Lean.class, "how lean it is")
                .map(clause -> lean(clause, located.report()))
                .orElse(new Stream.Lean.NotStated());
        clauses.finish();
        return new Stream(PartLowering.name(located.line()), kind, lean);
    }

    private static Stream.Lean lean(Clause.Lean clause, FileReport report) {
        return new FigureReader(report)
                .quantity(clause.percent(), Dimension.SHARE)
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
