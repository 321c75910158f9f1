package dev.gambrel.cli.json;

import com.fasterxml.jackson.core.JsonGenerator;
import dev.gambrel.text.TradeName;
import dev.gambrel.yields.figure.Estimate;
import dev.gambrel.yields.plan.Kind;
import dev.gambrel.yields.plan.YieldPlan;
import java.io.IOException;
import java.util.List;

/** Writes lines of a plan by their address, and figures with their spread. */
final class PlanNodes {
    private final JsonGenerator json;
    private final YieldPlan plan;

    PlanNodes(JsonGenerator json, YieldPlan plan) {
        this.json = json;
        this.plan = plan;
    }

    /** The address of a line as fields of the object that is being written. */
    void node(int node) throws IOException {
        json.writeArrayFieldStart("path");
        for (TradeName name : plan.node(node).path().names()) {
            json.writeString(name.text());
        }
        json.writeEndArray();
        if (plan.node(node).kind() == Kind.TRIMMED) {
            json.writeBooleanField("trimmed", true);
        }
    }

    void nodes(String name, List<Integer> nodes) throws IOException {
        json.writeArrayFieldStart(name);
        for (int node : nodes) {
            json.writeStartObject();
            node(node);
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    /** The mean, and where it is known the standard deviation. */
    void estimate(String name, Estimate estimate) throws IOException {
        json.writeNumberField(name, estimate.mean());
        double variance = estimate.spread().variance();
        if (!Double.isNaN(variance)) {
            json.writeNumberField(name + "Sd", Math.sqrt(variance));
        }
    }
}
