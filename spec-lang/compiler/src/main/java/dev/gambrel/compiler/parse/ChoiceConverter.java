package dev.gambrel.compiler.parse;

import dev.gambrel.compiler.internal.grammar.GambrelParser;
import dev.gambrel.compiler.internal.grammar.GambrelParser.AsClauseContext;
import dev.gambrel.compiler.internal.grammar.GambrelParser.ConditionContext;
import dev.gambrel.compiler.internal.grammar.GambrelParser.GradeValueContext;
import dev.gambrel.compiler.internal.grammar.GambrelParser.WeightLimitContext;
import dev.gambrel.compiler.syntax.Clause;
import dev.gambrel.compiler.syntax.Name;
import dev.gambrel.compiler.syntax.WrittenChoice;
import dev.gambrel.text.Span;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.choice.Bound;
import org.antlr.v4.runtime.ParserRuleContext;

/** When a cut is worked in a way: as a rule, or when something is so. */
final class ChoiceConverter {
    private static final TradeName A_RULE = TradeName.of("a rule");

    private final Offsets offsets;
    private final NameConverter names;
    private final FigureConverter figures;

    ChoiceConverter(Offsets offsets, NameConverter names, FigureConverter figures) {
        this.offsets = offsets;
        this.names = names;
        this.figures = figures;
    }

    /** "as a rule"; after "as" nothing else has a meaning, and is handed on as words. */
    Clause as(AsClauseContext clause) {
        Span span = offsets.of(clause);
        return names.name(clause.name()).text().equals(A_RULE)
                ? new Clause.Chosen(new WrittenChoice.AsARule(), span)
                : new Clause.Words(names.slice(span), span);
    }

    Clause when(ConditionContext condition, Span span) {
        Name about = name(condition.subject());
        return new Clause.Chosen(
                condition.weightLimit().isEmpty()
                        ? new WrittenChoice.Is(
                                about,
                                condition.gradeValue().stream().map(this::value).toList(),
                                condition.TO() != null)
                        : new WrittenChoice.Weighs(
                                about,
                                condition.weightLimit().stream()
                                        .map(this::limit)
                                        .toList()),
                span);
    }

    /** The sign at the end of a class belongs to the word before it, whatever gap is left. */
    Name value(GradeValueContext value) {
        Span span = offsets.of(value);
        boolean endsInSign = value.PLUS() != null || value.MINUS() != null;
        return endsInSign ? names.name(names.slice(span).replaceFirst(" (?=.$)", ""), span) : name(value);
    }

    private Name name(ParserRuleContext words) {
        Span span = offsets.of(words);
        boolean quoted = words.getStart().getType() == GambrelParser.STRING;
        String written = names.slice(span);
        return names.name(quoted ? NameConverter.unquoted(written) : written, span);
    }

    private WrittenChoice.Limit limit(WeightLimitContext limit) {
        return new WrittenChoice.Limit(kind(limit), figures.amount(limit.quantity()));
    }

    private static Bound.Kind kind(WeightLimitContext limit) {
        if (limit.UNDER() != null) {
            return Bound.Kind.UNDER;
        } else if (limit.OVER() != null) {
            return Bound.Kind.OVER;
        }
        return limit.MOST() != null ? Bound.Kind.AT_MOST : Bound.Kind.AT_LEAST;
    }
}
