package dev.gambrel.compiler.parse;

import dev.gambrel.compiler.internal.grammar.GambrelParser.AlongLandmarkContext;
import dev.gambrel.compiler.internal.grammar.GambrelParser.AtLandmarkContext;
import dev.gambrel.compiler.internal.grammar.GambrelParser.BetweenLandmarkContext;
import dev.gambrel.compiler.internal.grammar.GambrelParser.LandmarkContext;
import dev.gambrel.compiler.internal.grammar.GambrelParser.PointContext;
import dev.gambrel.compiler.internal.grammar.GambrelParser.SeparateLineContext;
import dev.gambrel.compiler.internal.grammar.GambrelParser.ToolsContext;
import dev.gambrel.compiler.internal.grammar.GambrelParser.WordsLandmarkContext;
import dev.gambrel.compiler.syntax.Clause;
import dev.gambrel.compiler.syntax.Name;
import dev.gambrel.compiler.syntax.WrittenLandmark;
import dev.gambrel.compiler.syntax.WrittenLandmark.Point;
import java.util.ArrayList;
import java.util.List;

/** Tools and landmarks. */
final class LandmarkConverter {
    private final Offsets offsets;
    private final NameConverter names;
    private final Wholeness whole;

    LandmarkConverter(Offsets offsets, NameConverter names, Wholeness whole) {
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
            add(new WrittenLandmark.At(names.name(c.name())), context, clauses);
        } else if (context instanceof AlongLandmarkContext c) {
            add(new WrittenLandmark.Along(names.name(c.name())), context, clauses);
        } else if (context instanceof WordsLandmarkContext c) {
            add(new WrittenLandmark.InWords(NameConverter.unquoted(c.STRING().getText())), context, clauses);
        }
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
