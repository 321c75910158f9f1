package dev.gambrel.cli.json;

import com.fasterxml.jackson.core.JsonGenerator;
import dev.gambrel.batches.BatchResult;
import dev.gambrel.quantity.Unit;
import dev.gambrel.yields.batch.BatchFigure;
import dev.gambrel.yields.batch.BatchPlan;
import dev.gambrel.yields.figure.Spread;
import java.io.IOException;
import java.util.List;

/** What a batch comes to as JSON, unrounded. A spread that is not stated is left out. */
public final class BatchJson {
    private final JsonGenerator json;
    private final double perKilogram;

    private BatchJson(JsonGenerator json, Unit unit) {
        this.json = json;
        this.perKilogram = 1 / unit.factor().doubleValue();
    }

    /**
     * Writes what came of a batch.
     *
     * @param result what came of it
     * @param unit the unit of every weight
     * @return a JSON object, ended by a line feed
     */
    public static String write(BatchResult result, Unit unit) {
        return Canonical.text(json -> new BatchJson(json, unit).write(result, unit.symbol()));
    }

    private void write(BatchResult result, String unit) throws IOException {
        BatchPlan plan = result.plan();
        json.writeStartObject();
        json.writeStringField("format", "gambrel batch of carcasses");
        json.writeNumberField("version", 1);
        json.writeStringField("specification", plan.tree().specification().title());
        json.writeNumberField("revision", plan.tree().specification().revision());
        json.writeStringField("unit", unit);
        json.writeNumberField("rows", result.rows());
        json.writeNumberField("worked out", result.sums().carcasses());
        counts("refused", result.counts().refused());
        counts("warned of", result.counts().warned());
        json.writeArrayFieldStart("parts");
        for (int v = 0; v < plan.size(); v++) {
            if (plan.isStated(v)) {
                json.writeStartObject();
                json.writeStringField("path", plan.node(v).path().toString());
                json.writeStringField("name", plan.node(v).name());
                figure(result.sums().line(v), result.sums().carcasses());
            }
        }
        json.writeEndArray();
        json.writeArrayFieldStart("totals");
        for (int t = 0; t < plan.totals().size(); t++) {
            json.writeStartObject();
            json.writeStringField("name", plan.totals().get(t).name());
            figure(result.sums().total(t), result.sums().carcasses());
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private void counts(String what, List<BatchResult.Count> counts) throws IOException {
        json.writeObjectFieldStart(what);
        for (BatchResult.Count count : counts) {
            json.writeNumberField(count.code().id(), count.rows());
        }
        json.writeEndObject();
    }

    private void figure(BatchFigure figure, long carcasses) throws IOException {
        json.writeNumberField("all", figure.sum() * perKilogram);
        if (carcasses > 0) {
            json.writeNumberField("each", figure.mean() * perKilogram);
        }
        spread("deviationBetween", figure.between());
        spread("deviationOfAll", figure.expected());
        json.writeEndObject();
    }

    private void spread(String name, Spread spread) throws IOException {
        if (spread instanceof Spread.Stated stated) {
            json.writeNumberField(name, stated.standardDeviation() * perKilogram);
        }
    }
}
