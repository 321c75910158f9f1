package dev.gambrel.cli.json;

import com.fasterxml.jackson.core.JsonGenerator;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.yields.packs.Answer;
import dev.gambrel.yields.packs.BatchVerdict;
import dev.gambrel.yields.packs.RuleResult;
import dev.gambrel.yields.packs.planning.PackAim;
import dev.gambrel.yields.packs.rule.Citation;
import dev.gambrel.yields.packs.rule.SecondLimit;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;
import java.util.Optional;

/** What a test says of a batch of packs as JSON. Weights are in the unit of the label, to 16 digits. */
public final class PackVerdictJson {
    private final JsonGenerator json;
    private final BatchVerdict verdict;
    private final Unit unit;

    private PackVerdictJson(JsonGenerator json, BatchVerdict verdict) {
        this.json = json;
        this.verdict = verdict;
        this.unit = verdict.batch().nominal().unit();
    }

    /**
     * Writes a verdict.
     *
     * @param verdict the verdict
     * @return a JSON object, ended by a line feed
     */
    public static String write(BatchVerdict verdict) {
        return Canonical.text(json -> new PackVerdictJson(json, verdict).write());
    }

    private void write() throws IOException {
        json.writeStartObject();
        json.writeStringField("format", "gambrel verdict on packs");
        json.writeNumberField("version", 1);
        json.writeStringField("test", verdict.test().name());
        json.writeStringField("unit", unit.symbol());
        weight("nominal", verdict.batch().nominal());
        json.writeNumberField("batch", verdict.batch().packs());
        json.writeNumberField("weighed", verdict.packs().count());
        weight("tolerance", verdict.tolerance().amount());
        weight("t1", verdict.tolerance().firstLimit());
        if (verdict.test().secondLimit() instanceof SecondLimit.NoneUnder) {
            weight("t2", verdict.tolerance().secondLimit());
        }
        json.writeStringField("answer", word(verdict.answer()));
        json.writeArrayFieldStart("rules");
        for (RuleResult result : verdict.results()) {
            rule(result);
        }
        json.writeEndArray();
        aim();
        sources();
        json.writeBooleanField("restsOnMemory", verdict.restsOnMemory());
        json.writeStringField("caution", BatchVerdict.CAUTION);
        json.writeEndObject();
    }

    private void rule(RuleResult result) throws IOException {
        json.writeStartObject();
        json.writeStringField("rule", result.rule().words());
        if (result instanceof RuleResult.Mean mean) {
            weight("found", mean.found());
            weight("least", mean.limit());
            weight("margin", mean.margin());
            json.writeNumberField("factor", mean.factor().value());
        } else if (result instanceof RuleResult.Count count) {
            weight("under", count.under());
            json.writeNumberField("found", count.found());
            json.writeNumberField("most", count.stage().accept());
            json.writeNumberField("margin", count.margin());
            json.writeNumberField("failsFrom", count.stage().reject());
        }
        json.writeStringField("answer", word(result.answer()));
        json.writeStringField("source", result.citation().toString());
        json.writeEndObject();
    }

    /** Of one pack alone no spread is known; where a test has no T2, there are no three rules to aim by. */
    private void aim() throws IOException {
        Optional<BigDecimal> deviation = verdict.packs().deviation();
        if (deviation.isPresent()) {
            kilograms("sd", deviation.get());
        }
        if (deviation.isPresent() && verdict.test().secondLimit() instanceof SecondLimit.NoneUnder) {
            PackAim aim = new PackAim(verdict.tolerance(), deviation.get().doubleValue(), 0);
            json.writeObjectFieldStart("lowestMean");
            kilograms("mean", new BigDecimal(aim.mean()));
            json.writeStringField("decidedBy", aim.governs().words());
            kilograms("givenAway", new BigDecimal(aim.givenAway()));
            json.writeEndObject();
        }
    }

    private void sources() throws IOException {
        json.writeArrayFieldStart("sources");
        for (Citation citation : verdict.sources()) {
            json.writeStartObject();
            json.writeStringField("document", citation.document());
            json.writeStringField("edition", citation.edition());
            json.writeStringField("certainty", citation.certainty().words());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void weight(String name, Quantity weight) throws IOException {
        kilograms(name, weight.common());
    }

    private void kilograms(String name, BigDecimal kilograms) throws IOException {
        BigDecimal amount = kilograms.divide(unit.factor(), MathContext.DECIMAL64);
        BigDecimal plain = amount.signum() == 0 ? BigDecimal.ZERO : amount.stripTrailingZeros();
        json.writeNumberField(name, plain.scale() < 0 ? plain.setScale(0) : plain);
    }

    private static String word(Answer answer) {
        return answer.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
