package dev.gambrel.compiler.restate;

import dev.gambrel.compiler.origin.ShareLine;
import dev.gambrel.compiler.restate.RestatedShare.Points;
import dev.gambrel.text.SourceText;
import dev.gambrel.text.Span;
import dev.gambrel.text.TradeName;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** What must change in the line of a part so that it states another share: numbers, and what they rest on. */
final class ShareEdits {
    private static final BigDecimal TWO = BigDecimal.valueOf(2);

    private final SourceText text;
    private final RestatedShare share;
    private final List<TextEdit> edits = new ArrayList<>();

    private ShareEdits(SourceText text, RestatedShare share) {
        this.text = text;
        this.share = share;
    }

    /** None where the line states all of it already; then what it rests on stays too. */
    static List<TextEdit> of(ShareLine line, RestatedShare share, TradeName source) {
        ShareEdits edits = new ShareEdits(line.text(), share);
        int end = edits.figure(line.share());
        if (!edits.edits.isEmpty()) {
            edits.source(line, end, source);
        }
        return edits.edits;
    }

    private int figure(ShareLine.Share written) {
        if (written instanceof ShareLine.PlusMinus figure) {
            number(figure.mean(), share.percent());
            if (share.spread() instanceof Points points) {
                number(figure.deviation(), points.points());
            }
            return figure.end();
        } else if (written instanceof ShareLine.Range figure) {
            range(figure);
            return figure.end();
        }
        ShareLine.MeanAlone figure = (ShareLine.MeanAlone) written;
        number(figure.mean(), share.percent());
        if (share.spread() instanceof Points points) {
            edits.add(new TextEdit(
                    figure.end(), figure.end(), " ± " + points.points().toPlainString() + " %"));
        }
        return figure.end();
    }

    /** A number that is the same in other digits, such as 33 for 33.0, stays. */
    private void number(Span written, BigDecimal wanted) {
        if (value(written).compareTo(wanted) != 0) {
            edits.add(new TextEdit(written.start(), written.end(), wanted.toPlainString()));
        }
    }

    private BigDecimal value(Span number) {
        return new BigDecimal(text.slice(number));
    }

    private void range(ShareLine.Range figure) {
        if (share.spread() instanceof Points points) {
            String words =
                    share.percent().toPlainString() + " % ± " + points.points().toPlainString() + " %";
            edits.add(new TextEdit(figure.low().start(), figure.end(), words));
            return;
        }
        BigDecimal middle = value(figure.low()).add(value(figure.high())).divide(TWO);
        BigDecimal by = share.percent().subtract(middle);
        number(figure.low(), value(figure.low()).add(by));
        number(figure.high(), value(figure.high()).add(by));
    }

    private void source(ShareLine line, int end, TradeName source) {
        if (line.sources().isEmpty()) {
            edits.add(new TextEdit(end, end, ", source " + SourceLine.written(source)));
            return;
        }
        Span cited = line.sources().get(0);
        boolean isSame = TradeName.areSame(text.slice(cited).replace("\"", ""), source.text());
        if (!isSame) {
            edits.add(new TextEdit(cited.start(), cited.end(), SourceLine.written(source)));
        }
    }
}
