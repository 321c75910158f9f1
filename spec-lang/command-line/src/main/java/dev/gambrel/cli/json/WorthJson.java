package dev.gambrel.cli.json;

import com.fasterxml.jackson.core.JsonGenerator;
import dev.gambrel.batches.sheets.PriceList;
import dev.gambrel.yields.cuttingtest.CuttingTest;
import dev.gambrel.yields.cuttingtest.Worth;
import dev.gambrel.yields.figure.Estimate;
import java.io.IOException;
import java.util.Optional;

/** The worth of a cutting test as a field of its object, unrounded. What is not known is left out. */
final class WorthJson {
    private final JsonGenerator json;
    private final PlanNodes nodes;

    private WorthJson(JsonGenerator json, PlanNodes nodes) {
        this.json = json;
        this.nodes = nodes;
    }

    /** Writes the field; nothing where nothing has a price. */
    static void write(JsonGenerator json, CuttingTest test, PriceList prices) throws IOException {
        if (!prices.prices().isEmpty()) {
            new WorthJson(json, new PlanNodes(json, test.plan())).worth(Worth.of(test, prices.prices()), prices);
        }
    }

    private void worth(Worth worth, PriceList prices) throws IOException {
        json.writeObjectFieldStart("worth");
        if (!prices.currency().isEmpty()) {
            json.writeStringField("currency", prices.currency());
        }
        json.writeArrayFieldStart("lines");
        for (Worth.Line line : worth.lines()) {
            json.writeStartObject();
            nodes.node(line.node());
            json.writeBooleanField("whole", line.isWhole());
            json.writeNumberField("perKilogram", line.perKilogram());
            money(line.actual(), line.expected(), line.difference());
            json.writeEndObject();
        }
        json.writeEndArray();
        money(worth.actual(), worth.isStated() ? Optional.of(worth.expected()) : Optional.empty(), worth.difference());
        nodes.nodes("pricesNotUsed", worth.notUsed());
        nodes.nodes("weightNotKnown", worth.notKnown());
        nodes.nodes("withoutPrice", worth.withoutPrice());
        json.writeEndObject();
    }

    private void money(Estimate actual, Optional<Estimate> expected, Optional<Estimate> difference) throws IOException {
        nodes.estimate("actual", actual);
        if (expected.isPresent()) {
            nodes.estimate("expected", expected.get());
        }
        if (difference.isPresent()) {
            nodes.estimate("difference", difference.get());
        }
    }
}
