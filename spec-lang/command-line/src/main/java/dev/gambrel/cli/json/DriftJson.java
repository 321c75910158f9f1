package dev.gambrel.cli.json;

import com.fasterxml.jackson.core.JsonGenerator;
import dev.gambrel.text.TradeName;
import dev.gambrel.yields.control.ChartAnswer;
import dev.gambrel.yields.control.ChartPoint;
import dev.gambrel.yields.control.ControlChart;
import dev.gambrel.yields.control.GroupDifference;
import dev.gambrel.yields.control.Signal;
import dev.gambrel.yields.drift.CutDrift;
import dev.gambrel.yields.drift.Drift;
import dev.gambrel.yields.drift.DriftSentences;
import dev.gambrel.yields.drift.GroupFinding;
import dev.gambrel.yields.drift.LabelledTest;
import dev.gambrel.yields.drift.PartDrift;
import dev.gambrel.yields.drift.ShapeDrift;
import dev.gambrel.yields.figure.Interval;
import dev.gambrel.yields.plan.Kind;
import dev.gambrel.yields.plan.Node;
import java.io.IOException;
import java.util.List;
import java.util.Locale;

/** How shares move as JSON, unrounded, in per cent of the cut. What is not known is left out; tests are counted from 0. */
public final class DriftJson {
    private final JsonGenerator json;
    private final Drift drift;
    private final DriftSentences sentences;

    private DriftJson(JsonGenerator json, Drift drift) {
        this.json = json;
        this.drift = drift;
        this.sentences = new DriftSentences(drift);
    }

    /**
     * Writes how shares move.
     *
     * @param drift how they do
     * @return a JSON object, ended by a line feed
     */
    public static String write(Drift drift) {
        return Canonical.text(json -> new DriftJson(json, drift).all());
    }

    private void all() throws IOException {
        json.writeStartObject();
        json.writeStringField("format", "gambrel drift of cutting tests");
        json.writeNumberField("version", 1);
        json.writeStringField("unit", "%");
        json.writeArrayFieldStart("tests");
        for (LabelledTest test : drift.tests()) {
            json.writeString(test.name());
        }
        json.writeEndArray();
        json.writeArrayFieldStart("cuts");
        for (CutDrift cut : drift.cuts()) {
            cut(cut);
        }
        json.writeEndArray();
        json.writeNumberField("signals", drift.signals());
        json.writeNumberField("likelyFalseSignals", drift.likelyFalseSignals());
        json.writeBooleanField("quiet", drift.isQuiet());
        json.writeNumberField("comparisons", drift.comparisons());
        json.writeArrayFieldStart("groups");
        for (GroupFinding finding : drift.groups()) {
            group(finding);
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private Node node(int node) {
        return drift.tests().get(0).test().plan().node(node);
    }

    private void path(int node) throws IOException {
        json.writeArrayFieldStart("path");
        for (TradeName name : node(node).path().names()) {
            json.writeString(name.text());
        }
        json.writeEndArray();
        if (node(node).kind() == Kind.TRIMMED) {
            json.writeBooleanField("trimmed", true);
        }
    }

    private void cut(CutDrift cut) throws IOException {
        json.writeStartObject();
        path(cut.cut());
        json.writeArrayFieldStart("tests");
        for (int test : cut.tests()) {
            json.writeNumber(test);
        }
        json.writeEndArray();
        json.writeArrayFieldStart("parts");
        for (PartDrift part : cut.parts()) {
            json.writeStartObject();
            path(part.part());
            numbers("percents", part.percents());
            chart("single", part.single());
            chart("average", part.average());
            json.writeEndObject();
        }
        json.writeEndArray();
        if (cut.shape() instanceof ShapeDrift.Charted charted) {
            shape(charted);
        }
        json.writeArrayFieldStart("moved");
        for (String sentence : sentences.of(cut)) {
            json.writeString(sentence);
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private void numbers(String name, List<Double> values) throws IOException {
        json.writeArrayFieldStart(name);
        for (double value : values) {
            json.writeNumber(value);
        }
        json.writeEndArray();
    }

    private void range(String name, Interval range) throws IOException {
        json.writeArrayFieldStart(name);
        json.writeNumber(range.low());
        json.writeNumber(range.high());
        json.writeEndArray();
    }

    private void chart(String name, ChartAnswer answer) throws IOException {
        if (answer instanceof ChartAnswer.TooFew few) {
            json.writeObjectFieldStart(name);
            range("next95", few.next());
            json.writeEndObject();
        } else if (answer instanceof ChartAnswer.Drawn drawn) {
            chart(name, drawn.chart());
        }
    }

    private void chart(String name, ControlChart chart) throws IOException {
        json.writeObjectFieldStart(name);
        json.writeNumberField("centre", chart.level().centre());
        json.writeNumberField("sd", chart.level().deviation());
        json.writeArrayFieldStart("points");
        for (ChartPoint point : chart.points()) {
            json.writeStartObject();
            json.writeNumberField("plotted", point.plotted());
            range("limits", point.limits());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("signals");
        for (Signal signal : chart.signals()) {
            json.writeNumber(signal.index());
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private void shape(ShapeDrift.Charted charted) throws IOException {
        json.writeObjectFieldStart("shape");
        json.writeArrayFieldStart("parts");
        for (TradeName part : charted.parts()) {
            json.writeString(part.text());
        }
        json.writeEndArray();
        numbers("squared", charted.chart().squared());
        json.writeNumberField("limit", charted.chart().limit());
        json.writeArrayFieldStart("signals");
        for (Signal signal : charted.chart().signals()) {
            json.writeNumber(signal.index());
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private void group(GroupFinding finding) throws IOException {
        GroupDifference difference = finding.difference();
        json.writeStartObject();
        path(finding.part());
        json.writeStringField("by", finding.common().name().toLowerCase(Locale.ROOT));
        json.writeStringField("group", difference.group());
        json.writeNumberField("difference", difference.test().difference());
        range("range95", difference.range());
        json.writeNumberField("chance", difference.chance());
        json.writeEndObject();
    }
}
