package dev.gambrel.compiler.parse;

import dev.gambrel.compiler.internal.grammar.GambrelParser;
import dev.gambrel.compiler.internal.grammar.GambrelParser.AlongLandmarkContext;
import dev.gambrel.compiler.internal.grammar.GambrelParser.AtLandmarkContext;
import dev.gambrel.compiler.internal.grammar.GambrelParser.BetweenLandmarkContext;
import dev.gambrel.compiler.internal.grammar.GambrelParser.DistanceLandmarkContext;
import dev.gambrel.compiler.internal.grammar.GambrelParser.LandmarkContext;
import dev.gambrel.compiler.internal.grammar.GambrelParser.NameContext;
import dev.gambrel.compiler.internal.grammar.GambrelParser.ParallelLandmarkContext;
import dev.gambrel.compiler.internal.grammar.GambrelParser.PointContext;
import dev.gambrel.compiler.internal.grammar.GambrelParser.QuantityContext;
import dev.gambrel.compiler.internal.grammar.GambrelParser.SeparateLineContext;
import dev.gambrel.compiler.internal.grammar.GambrelParser.ToolsContext;
import dev.gambrel.compiler.internal.grammar.GambrelParser.WordsLandmarkContext;
import dev.gambrel.compiler.syntax.Clause;
import dev.gambrel.compiler.syntax.Name;
import dev.gambrel.compiler.syntax.WrittenLandmark;
import dev.gambrel.compiler.syntax.WrittenLandmark.Distance;
import dev.gambrel.compiler.syntax.WrittenLandmark.Point;
import dev.gambrel.text.Span;
import java.util.ArrayList;
import java.util.List;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.tree.TerminalNode;

/** Tools and landmarks. */
final class LandmarkConverter {
    private final Offsets offsets;
    private final NameConverter names;
    private final FigureConverter figures;
    private final Wholeness whole;

    LandmarkConverter(Offsets offsets, NameConverter names, FigureConverter figures, Wholeness whole) {
        this.figures = figures;
        this.whole = whole;
        this.offsets = offsets;
        this.names = names;
    }

    List<Clause> separation(SeparateLineContext line) {
        List<Clause> clauses = new ArrayList<>(2);
        if (whole.of(line.tools())) {
            clauses.add(tools(line.tools()));
        }
        if (whole.of(line.landmark())) {
            landmark(line.landmark(), clauses);
        }
        return clauses;
    }

    private Clause tools(ToolsContext context) {
        List<Name> tools = context.WORD().stream()
                .map(word -> names.name(word.getText(), offsets.of(word.getSymbol())))
                .toList();
        return new Clause.Tools(tools, offsets.of(context));
    }

    private void landmark(LandmarkContext context, List<Clause> clauses) {
        if (context instanceof BetweenLandmarkContext c) {
            add(new WrittenLandmark.Between(point(c.point(0)), point(c.point(1))), context, clauses);
        } else if (context instanceof AtLandmarkContext c) {
            add(at(c), context, clauses);
        } else if (context instanceof AlongLandmarkContext c) {
            add(new WrittenLandmark.Along(names.name(c.name())), context, clauses);
        } else if (context instanceof ParallelLandmarkContext c) {
            add(new WrittenLandmark.Parallel(names.name(c.name())), context, clauses);
        } else if (context instanceof DistanceLandmarkContext c) {
            List<Distance> distances = c.distance().stream()
                    .map(each -> distance(List.of(), each.quantity(), each.name()))
                    .toList();
            add(new WrittenLandmark.Distances(distances), context, clauses);
        } else if (context instanceof WordsLandmarkContext c) {
            add(new WrittenLandmark.InWords(NameConverter.unquoted(c.STRING().getText())), context, clauses);
        }
    }

    /** "at the stifle joint", or "at most 40 mm from the eye". */
    private WrittenLandmark at(AtLandmarkContext context) {
        Name name = names.name(context.name(0));
        return context.quantity() == null
                ? new WrittenLandmark.At(name)
                : new WrittenLandmark.Distances(List.of(distance(List.of(name), context.quantity(), context.name(1))));
    }

    /** "the eye at the rib end": what it is measured from, and at which end. */
    private Distance distance(List<Name> limit, QuantityContext quantity, NameContext place) {
        int last = place.getChildCount() - 1;
        for (int i = last - 1; i > 0; i--) {
            if (((TerminalNode) place.getChild(i)).getSymbol().getType() == GambrelParser.AT) {
                Span from = offsets.of(place.getStart(), token(place, i - 1));
                Span at = offsets.of(token(place, i + 1), place.getStop());
                return new Distance(
                        limit, figures.amount(quantity), names.name(names.slice(from), from), names.slice(at));
            }
        }
        return new Distance(limit, figures.amount(quantity), names.name(place), "");
    }

    private static Token token(NameContext name, int child) {
        return ((TerminalNode) name.getChild(child)).getSymbol();
    }

    private void add(WrittenLandmark landmark, LandmarkContext context, List<Clause> clauses) {
        clauses.add(new Clause.At(landmark, offsets.of(context)));
    }

    private Point point(PointContext context) {
        String region = context.RIB() != null ? "rib" : context.WORD().getText();
        String which =
                context.NUMBER() != null ? context.NUMBER().getText() : context.FIRST() != null ? "first" : "last";
        return new Point(region, which, offsets.of(context));
    }
}
