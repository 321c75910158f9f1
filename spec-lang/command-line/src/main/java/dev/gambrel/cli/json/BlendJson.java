package dev.gambrel.cli.json;

import com.fasterxml.jackson.core.JsonGenerator;
import dev.gambrel.blends.BatchOrder;
import dev.gambrel.blends.Blend;
import dev.gambrel.blends.CheapestBatch;
import dev.gambrel.blends.LargestBatch;
import dev.gambrel.blends.LeanTarget;
import dev.gambrel.blends.PointOfLean;
import dev.gambrel.blends.Taken;
import dev.gambrel.yields.figure.Estimate;
import dev.gambrel.yields.figure.Spread;
import java.io.IOException;
import java.util.List;

/** A blend as JSON, unrounded, in kilograms. What is not stated is left out. */
public final class BlendJson {
    private final JsonGenerator json;
    private final List<String> leftOut;

    private BlendJson(JsonGenerator json, List<String> leftOut) {
        this.json = json;
        this.leftOut = leftOut;
    }

    /**
     * Writes the largest batch.
     *
     * @param target how lean it is to be
     * @param found the batch
     * @param leftOut streams that could not be blended, each with the reason
     * @return a JSON object, ended by a line feed
     */
    public static String write(LeanTarget target, LargestBatch found, List<String> leftOut) {
        return Canonical.text(json -> new BlendJson(json, leftOut).largest(target, found));
    }

    /**
     * Writes a batch of a given weight.
     *
     * @param order what was to be made
     * @param found the batch
     * @param leftOut streams that could not be blended, each with the reason
     * @return a JSON object, ended by a line feed
     */
    public static String write(BatchOrder order, CheapestBatch found, List<String> leftOut) {
        return Canonical.text(json -> new BlendJson(json, leftOut).cheapest(order.target(), found));
    }

    private void largest(LeanTarget target, LargestBatch found) throws IOException {
        begin(target, found.batch());
        taken("left", found.left());
        if (!found.missing().isNothing()) {
            json.writeObjectFieldStart("missing");
            json.writeNumberField("leanPercent", found.missing().edge());
            json.writeNumberField("kilogramPoints", found.missing().points());
            json.writeEndObject();
        }
        json.writeEndObject();
    }

    private void cheapest(LeanTarget target, CheapestBatch found) throws IOException {
        begin(target, found.blend());
        if (found.blend().cost().isPresent()) {
            json.writeNumberField("cost", found.blend().cost().getAsDouble());
        }
        point("onePointLeanerCostsPerKilogram", found.leaner());
        point("onePointFatterCostsPerKilogram", found.fatter());
        json.writeEndObject();
    }

    private void point(String field, PointOfLean point) throws IOException {
        if (point instanceof PointOfLean.Costs costs) {
            json.writeNumberField(field, costs.money());
        }
    }

    private void begin(LeanTarget target, Blend blend) throws IOException {
        json.writeStartObject();
        json.writeStringField("format", "gambrel blend");
        json.writeNumberField("version", 1);
        json.writeObjectFieldStart("target");
        json.writeNumberField("leastPercent", target.low());
        json.writeNumberField("mostPercent", target.high());
        json.writeStringField("judged", target.judged().words());
        json.writeEndObject();
        json.writeNumberField("kilograms", blend.kilograms());
        json.writeFieldName("lean");
        lean(blend.lean());
        taken("taken", blend.taken());
        json.writeArrayFieldStart("leftOut");
        for (String each : leftOut) {
            json.writeString(each);
        }
        json.writeEndArray();
    }

    private void taken(String field, List<Taken> all) throws IOException {
        json.writeArrayFieldStart(field);
        for (Taken each : all) {
            json.writeStartObject();
            json.writeStringField("tub", each.tub().name().text());
            json.writeNumberField("kilograms", each.kilograms());
            json.writeFieldName("lean");
            lean(each.tub().lean().percent());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void lean(Estimate lean) throws IOException {
        json.writeStartObject();
        json.writeNumberField("meanPercent", lean.mean());
        if (lean.spread() instanceof Spread.Stated stated) {
            json.writeNumberField("standardDeviationPoints", stated.standardDeviation());
        }
        json.writeEndObject();
    }
}
