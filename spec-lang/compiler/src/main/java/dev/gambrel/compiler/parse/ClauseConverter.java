package dev.gambrel.compiler.parse;

import dev.gambrel.compiler.internal.grammar.GambrelParser.*;
import dev.gambrel.compiler.syntax.BenchClause;
import dev.gambrel.compiler.syntax.Clause;
import dev.gambrel.compiler.syntax.Figure;
import dev.gambrel.compiler.syntax.Name;
import dev.gambrel.compiler.syntax.PortionClause;
import dev.gambrel.compiler.syntax.RevisionClause;
import dev.gambrel.compiler.syntax.TermClause;
import dev.gambrel.text.Span;
import dev.gambrel.tree.BoneState;
import dev.gambrel.tree.Source;
import dev.gambrel.tree.Stream;
import dev.gambrel.tree.TrimRule;
import dev.gambrel.tree.anatomy.PieceCount;
import dev.gambrel.tree.term.Judged;
import java.util.ArrayList;
import java.util.List;
import org.antlr.v4.runtime.tree.ParseTree;

/** What follows a line's own words: clauses with commas between, and the arrow. */
final class ClauseConverter {
    private final Offsets offsets;
    private final NameConverter names;
    private final FigureConverter figures;
    private final Wholeness whole;
    private final PortionConverter portions;
    private final ChoiceConverter choices;
    private final EstimateConverter estimates;

    ClauseConverter(Offsets offsets, NameConverter names, FigureConverter figures, Wholeness whole) {
        this.whole = whole;
        this.offsets = offsets;
        this.names = names;
        this.figures = figures;
        this.portions = new PortionConverter(names, figures, whole);
        this.choices = new ChoiceConverter(offsets, names, figures);
        this.estimates = new EstimateConverter(offsets, names, figures, whole);
    }

    Name gradeValue(GradeValueContext value) {
        return choices.value(value);
    }

    EstimateConverter estimates() {
        return estimates;
    }

    /** Whatever of a tail could be read, in the order written. */
    List<Clause> tail(TailContext tail) {
        List<Clause> clauses = new ArrayList<>();
        for (ParseTree child : tail.children == null ? List.<ParseTree>of() : tail.children) {
            if (child instanceof ClauseContext clause && whole.of(clause)) {
                clause(clause, clauses);
            } else if (child instanceof NameContext name && whole.of(name)) {
                clauses.add(arrow(name));
            }
        }
        return clauses;
    }

    /** The clauses of a line that has no other words. */
    List<Clause> of(TermLineContext line) {
        List<Clause> clauses = new ArrayList<>();
        line.clause().stream().filter(whole::of).forEach(clause -> clause(clause, clauses));
        return clauses;
    }

    /** What is packed in what. */
    List<Clause> of(PackLineContext line) {
        if (!whole.of(line.name())) {
            return List.of();
        }
        Name container = names.name(line.name());
        Span span = offsets.of(line.getStart(), line.name().getStop());
        return List.of(
                line.IN() != null
                        ? new TermClause.PackedIn(container, span)
                        : new PortionClause.Packed(number(line), container, span));
    }

    private static String number(PackLineContext line) {
        if (line.NUMBER() != null) {
            return line.NUMBER().getText();
        }
        return line.ONE() != null ? "1" : "2";
    }

    private void clause(ClauseContext clause, List<Clause> clauses) {
        estimates.clause(clause, offsets.of(clause)).ifPresentOrElse(clauses::add, () -> add(clause, clauses));
    }

    private Clause arrow(NameContext context) {
        Name name = names.name(context);
        return new Clause.Arrow(name, name.span());
    }

    Clause figure(FigureContext context) {
        Figure figure = figures.figure(context);
        return new Clause.Figures(figure, figure.span());
    }

    private Clause figure(FigureClauseContext context, Span span) {
        if (context.THICK() != null) {
            return new PortionClause.Thick(figures.figure(context.expectation()), span);
        } else if (context.RIBS() != null) {
            return new BenchClause.RibCount(figures.figure(context.expectation()), span);
        }
        List<Name> of = context.name() == null ? List.of() : List.of(names.name(context.name()));
        return new Clause.Figures(figures.figure(context.expectation(), of, span), span);
    }

    /** What is said of a portion's size right after its name. */
    Clause size(PortionLineContext context) {
        Figure figure = figures.figure(context.expectation());
        return context.THICK() != null
                ? new PortionClause.Thick(figure, figure.span())
                : new Clause.Figures(figure, figure.span());
    }

    Clause fatLimit(FatLimitContext context) {
        TrimRule.Where where = context.ANY() != null ? TrimRule.Where.AT_ANY_POINT : TrimRule.Where.ON_AVERAGE;
        return new Clause.FatLimit(figures.amount(context.quantity()), where, offsets.of(context));
    }

    private void add(ClauseContext clause, List<Clause> clauses) {
        Span span = offsets.of(clause);
        if (clause instanceof FigureClauseContext c) {
            clauses.add(figure(c, span));
        } else if (clause instanceof CountClauseContext c) {
            PieceCount count = c.ONE() != null ? PieceCount.ONE : PieceCount.TWO;
            clauses.add(c.PEOPLE() != null ? new BenchClause.TwoPeople(span) : new Clause.Count(count, span));
        } else if (clause instanceof BoneInClauseContext) {
            clauses.add(new Clause.Bones(BoneState.BONE_IN, span));
        } else if (clause instanceof PartBonedClauseContext) {
            clauses.add(new Clause.Bones(BoneState.PART_BONED, span));
        } else if (clause instanceof BonelessClauseContext) {
            clauses.add(new Clause.Bones(BoneState.BONELESS, span));
        } else if (clause instanceof TextClauseContext c) {
            clauses.add(new Clause.Text(NameConverter.unquoted(c.STRING().getText()), span));
        } else if (clause instanceof WordsClauseContext) {
            clauses.add(new Clause.Words(names.slice(span), span));
        } else if (clause instanceof AsClauseContext c) {
            clauses.add(choices.as(c));
        } else if (clause instanceof WhenClauseContext c) {
            clauses.add(choices.when(c.condition(), span));
        } else {
            addWithNames(clause, span, clauses);
        }
    }

    private void addWithNames(ClauseContext clause, Span span, List<Clause> clauses) {
        if (clause instanceof SourceClauseContext c) {
            clauses.add(new Clause.Cites(names.name(c.name()), span));
        } else if (clause instanceof AlsoClauseContext c) {
            List<String> regions = c.name().stream()
                    .skip(1)
                    .map(region -> names.name(region).text().text())
                    .toList();
            clauses.add(new Clause.Also(names.name(c.name(0)), regions, span));
        } else if (clause instanceof RemainderClauseContext c) {
            Name name = names.name(c.name());
            clauses.add(new Clause.Remainder(name, name.span()));
        } else if (clause instanceof DifferenceClauseContext c) {
            clauses.add(new RevisionClause.Difference(names.name(c.name()), span));
        } else if (clause instanceof OnlyFromClauseContext c) {
            clauses.add(new Clause.OnlyFrom(names.name(c.name()), span));
        } else if (clause instanceof LossClauseContext c) {
            List<Figure> figure = whole.of(c.figure()) ? List.of(figures.figure(c.figure())) : List.of();
            clauses.add(new Clause.Loss(names.name(c.name()), figure, span));
        } else {
            addWithFigures(clause, span, clauses);
        }
    }

    private void addWithFigures(ClauseContext clause, Span span, List<Clause> clauses) {
        if (clause instanceof RibsClauseContext c) {
            clauses.add(new Clause.Ribs(c.NUMBER(0).getText(), c.NUMBER(1).getText(), span));
        } else if (clause instanceof LeanClauseContext c) {
            clauses.add(new Clause.Lean(figures.figure(c.expectation()), judged(c), span));
        } else if (clause instanceof KindClauseContext c) {
            clauses.add(new Clause.Kind(kind(c), span));
        } else if (clause instanceof ReplacesClauseContext c) {
            clauses.add(new RevisionClause.Replaces(c.NUMBER().getText(), span));
        } else if (clause instanceof InClauseContext c) {
            clauses.add(new RevisionClause.InForce(names.slice(offsets.of(c.date())), span));
        } else if (clause instanceof HangingClauseContext c) {
            clauses.add(new Clause.Hanging(figures.figure(c.daily()), figures.amount(c.quantity()), span));
        } else if (clause instanceof ButClauseContext c) {
            clauses.add(new Clause.But(NameConverter.unquoted(c.STRING().getText()), span));
        } else if (clause instanceof BecauseClauseContext c) {
            clauses.add(
                    new RevisionClause.Because(NameConverter.unquoted(c.STRING().getText()), span));
        } else if (clause instanceof SourceKindClauseContext c) {
            clauses.add(new Clause.Citation(
                    sourceKind(c), NameConverter.unquoted(c.STRING().getText()), span));
        } else {
            portions.clause(clause, span).ifPresent(clauses::add);
        }
    }

    private static Judged judged(LeanClauseContext context) {
        if (context.VISUAL() != null) {
            return Judged.VISUAL;
        }
        return context.CHEMICAL() != null ? Judged.CHEMICAL : Judged.NOT_STATED;
    }

    private static Stream.Kind kind(KindClauseContext context) {
        if (context.SALEABLE() != null) {
            return Stream.Kind.SALEABLE;
        }
        return context.WASTE() != null ? Stream.Kind.WASTE : Stream.Kind.BY_PRODUCT;
    }

    private static Source.Kind sourceKind(SourceKindClauseContext context) {
        if (context.PUBLISHED() != null) {
            return Source.Kind.PUBLISHED;
        } else if (context.MEASURED() != null) {
            return Source.Kind.MEASURED;
        } else if (context.JUDGEMENT() != null) {
            return Source.Kind.JUDGEMENT;
        }
        return context.MEMORY() != null ? Source.Kind.MEMORY : Source.Kind.COMMON_PRACTICE;
    }
}
