package dev.gambrel.cli.json;

import com.fasterxml.jackson.core.JsonGenerator;
import dev.gambrel.quantity.Unit;
import dev.gambrel.yields.CombinedYields;
import dev.gambrel.yields.Doubt;
import dev.gambrel.yields.ExpectedYields;
import dev.gambrel.yields.Outcome;
import dev.gambrel.yields.YieldRow;
import dev.gambrel.yields.figure.CombinedEstimate;
import dev.gambrel.yields.figure.Estimate;
import dev.gambrel.yields.figure.Interval;
import dev.gambrel.yields.figure.Spread;
import java.io.IOException;
import java.util.Optional;

/** What several carcasses give together as JSON, unrounded. A spread that is not stated is left out. */
public final class CombinedJson {
    private final JsonGenerator json;
    private final CombinedYields yields;
    private final double perKilogram;

    private CombinedJson(JsonGenerator json, CombinedYields yields, Unit unit) {
        this.json = json;
        this.yields = yields;
        this.perKilogram = 1 / unit.factor().doubleValue();
    }

    /**
     * Writes yields.
     *
     * @param yields the yields
     * @param unit the unit of every weight
     * @return a JSON object, ended by a line feed
     */
    public static String write(CombinedYields yields, Unit unit) {
        return Canonical.text(json -> new CombinedJson(json, yields, unit).write(unit.symbol()));
    }

    private void write(String unit) throws IOException {
        ExpectedYields one = yields.ofOne();
        json.writeStartObject();
        json.writeStringField("format", "gambrel expected yields of several carcasses");
        json.writeNumberField("version", 1);
        json.writeStringField("specification", one.tree().specification().title());
        json.writeNumberField("revision", one.tree().specification().revision());
        json.writeStringField("species", one.tree().species().name().text());
        json.writeStringField("unit", unit);
        json.writeStringField("basis", one.given().basis().words());
        json.writeNumberField("carcasses", yields.lot().number());
        json.writeStringField("meanWeight", one.given().mass().toString());
        doubt();
        json.writeArrayFieldStart("parts");
        for (YieldRow row : one.rows()) {
            row(row);
        }
        json.writeEndArray();
        streams();
        json.writeObjectFieldStart("totals");
        for (Outcome outcome : Outcome.values()) {
            json.writeFieldName(outcome.words());
            weight(yields.total(outcome));
        }
        json.writeFieldName("products");
        weight(yields.products());
        json.writeEndObject();
        json.writeEndObject();
    }

    private void doubt() throws IOException {
        if (yields.doubt() instanceof Doubt.FromTests from) {
            json.writeNumberField("cuttingTests", from.tests());
        }
        json.writeStringField(
                "rangesHold", yields.doubt() instanceof Doubt.NotSaid ? "what carcasses differ by alone" : "both");
    }

    private void row(YieldRow row) throws IOException {
        json.writeStartObject();
        YieldJson.named(json, row);
        YieldJson.pieces(json, row.pieces() * yields.lot().number());
        Optional<CombinedEstimate> weight = yields.allPieces(row);
        if (weight.isPresent()) {
            json.writeFieldName("allCarcasses");
            weight(weight.get());
        }
        if (row.home().isPresent()) {
            json.writeStringField("goesTo", YieldJson.home(row.home().get()));
        }
        json.writeEndObject();
    }

    private void streams() throws IOException {
        json.writeArrayFieldStart("streams");
        for (CombinedYields.StreamTotal stream : yields.streams()) {
            json.writeStartObject();
            json.writeStringField("name", stream.stream().name().text());
            json.writeStringField("kind", stream.stream().kind().words());
            json.writeFieldName("weight");
            weight(stream.weight());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void weight(CombinedEstimate weight) throws IOException {
        json.writeStartObject();
        json.writeNumberField("mean", weight.mean() * perKilogram);
        deviation("sdBetweenCarcasses", weight.between());
        deviation("sdOfDoubt", weight.doubt());
        deviation("sd", weight.whole().spread());
        Estimate ranged = yields.doubt() instanceof Doubt.NotSaid ? weight.betweenAlone() : weight.whole();
        Optional<Interval> range = ranged.weightRange95();
        if (range.isPresent()) {
            json.writeNumberField("low95", range.get().low() * perKilogram);
            json.writeNumberField("high95", range.get().high() * perKilogram);
        }
        json.writeEndObject();
    }

    private void deviation(String name, Spread spread) throws IOException {
        if (spread instanceof Spread.Stated stated) {
            json.writeNumberField(name, stated.standardDeviation() * perKilogram);
        }
    }
}
