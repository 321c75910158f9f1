package dev.gambrel.cli.json;

import com.fasterxml.jackson.core.JsonGenerator;
import dev.gambrel.batches.sheets.PriceList;
import dev.gambrel.batches.sheets.SheetReport;
import dev.gambrel.yields.cuttingtest.PartComparison;
import dev.gambrel.yields.cuttingtest.Shortfall;
import dev.gambrel.yields.cuttingtest.WhereItWent;
import dev.gambrel.yields.plan.YieldPlan;
import dev.gambrel.yields.reconciliation.CutBalance;
import dev.gambrel.yields.reconciliation.GlobalTest;
import dev.gambrel.yields.reconciliation.Reconciled;
import dev.gambrel.yields.reconciliation.error.Suspect;
import dev.gambrel.yields.reconciliation.pattern.Explanation;
import dev.gambrel.yields.reconciliation.pattern.Pattern;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** Cutting tests as JSON, unrounded, in kilograms. What is not known is left out. */
public final class BalanceJson {
    private final JsonGenerator json;
    private final SheetReport report;
    private final YieldPlan plan;
    private final PlanNodes nodes;

    private BalanceJson(JsonGenerator json, SheetReport report) {
        this.json = json;
        this.report = report;
        this.plan = report.test().plan();
        this.nodes = new PlanNodes(json, plan);
    }

    /**
     * Writes cutting tests.
     *
     * @param reports one for each sheet
     * @param prices of their parts; none for no worth
     * @return a JSON object, ended by a line feed
     */
    public static String write(List<SheetReport> reports, PriceList prices) {
        return Canonical.text(json -> {
            json.writeStartObject();
            json.writeStringField("format", "gambrel balance of cutting tests");
            json.writeNumberField("version", 1);
            json.writeStringField("unit", "kg");
            json.writeArrayFieldStart("sheets");
            for (SheetReport report : reports) {
                new BalanceJson(json, report).sheet(prices);
            }
            json.writeEndArray();
            json.writeEndObject();
        });
    }

    private void sheet(PriceList prices) throws IOException {
        json.writeStartObject();
        json.writeStringField("file", report.sheet().name());
        said("date", report.sheet().heading().date());
        said("lot", report.sheet().heading().lot());
        said("cutter", report.sheet().heading().cutter());
        json.writeNumberField(
                "carcass", report.sheet().heading().carcass().mass().value());
        json.writeStringField(
                "basis", report.sheet().heading().carcass().basis().words());
        json.writeStringField("verdict", word(report.faults().verdict()));
        json.writeNumberField("level", SheetReport.LEVEL);
        if (report.test().reconciled().test().degreesOfFreedom() > 0) {
            test("test", report.test().reconciled().test());
        }
        weighed();
        balances("cuts", report.test().reconciled().balances());
        balances("moreOutThanIn", report.faults().moreOutThanIn());
        nodes.nodes("belowNothing", report.faults().belowNothing());
        nodes.nodes("notChecked", report.test().notChecked());
        nodes.nodes(
                "beyondChance",
                PartComparison.beyondChance(report.weighed(), SheetReport.LEVEL).stream()
                        .map(PartComparison::node)
                        .toList());
        suspects();
        patterns();
        balanced();
        together();
        whereItWent();
        Optional<Shortfall> shortfall = Shortfall.of(report.test(), SheetReport.LEVEL);
        if (shortfall.isPresent()) {
            nodes.estimate("meatMissing", shortfall.get().missing());
        }
        WorthJson.write(json, report.test(), prices);
        json.writeEndObject();
    }

    private void said(String name, String value) throws IOException {
        if (!value.isEmpty()) {
            json.writeStringField(name, value);
        }
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    private void test(String name, GlobalTest test) throws IOException {
        json.writeObjectFieldStart(name);
        json.writeNumberField("chiSquare", test.chiSquare());
        json.writeNumberField("degreesOfFreedom", test.degreesOfFreedom());
        json.writeNumberField("probability", test.probability());
        json.writeEndObject();
    }

    private void known(String name, OptionalDouble figure) throws IOException {
        if (figure.isPresent()) {
            json.writeNumberField(name, figure.getAsDouble());
        }
    }

    private void weighed() throws IOException {
        json.writeArrayFieldStart("weighed");
        for (PartComparison part : report.weighed()) {
            json.writeStartObject();
            nodes.node(part.node());
            nodes.estimate("weighed", part.weighed());
            if (part.isStated()) {
                nodes.estimate("expected", part.expected());
            }
            known("difference", part.difference());
            known("z", part.z());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void balances(String name, List<CutBalance> balances) throws IOException {
        json.writeArrayFieldStart(name);
        for (CutBalance balance : balances) {
            json.writeStartObject();
            nodes.node(balance.cut());
            double in = report.test().reconciled().readings().weight(balance.cut());
            json.writeNumberField("in", in);
            json.writeNumberField("out", in + balance.excess().mean());
            nodes.estimate("excess", balance.excess());
            json.writeNumberField("z", balance.z());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void suspects() throws IOException {
        json.writeArrayFieldStart("suspects");
        for (Suspect suspect : report.faults().suspects().found()) {
            json.writeStartObject();
            if (suspect instanceof Suspect.OneReading one) {
                nodes.nodes("readings", List.of(one.node()));
                nodes.estimate("tooMuch", one.error());
            } else if (suspect instanceof Suspect.OneBalance balance) {
                nodes.nodes("cuts", balance.cuts());
                nodes.nodes("readings", balance.readings());
                nodes.estimate("missing", balance.missing());
            }
            json.writeNumberField("z", suspect.z());
            test("after", suspect.after());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeBooleanField("suspectsComplete", report.faults().suspects().isComplete());
    }

    private void patterns() throws IOException {
        json.writeArrayFieldStart("patterns");
        for (Explanation explanation : report.faults().explanations()) {
            json.writeStartObject();
            pattern(explanation.pattern());
            nodes.estimate("size", explanation.size());
            json.writeBooleanField("ofKnownSize", explanation.pattern().isOfKnownSize());
            json.writeNumberField("z", explanation.z());
            test("after", explanation.after());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void pattern(Pattern pattern) throws IOException {
        if (pattern instanceof Pattern.SameAmountEachWeighing same) {
            kind("same amount each weighing", same.nodes());
            json.writeStringField("scale", same.scale());
        } else if (pattern instanceof Pattern.SamePartOfEachWeight part) {
            kind("same part of each weight", part.nodes());
            json.writeStringField("scale", part.scale());
        } else if (pattern instanceof Pattern.OneWrittenAsPair one) {
            kind("one written as pair", List.of(one.node()));
        } else if (pattern instanceof Pattern.PairCountedTwice twice) {
            kind("pair counted twice", List.of(twice.node()));
        } else if (pattern instanceof Pattern.WeighedBeforeTrimming before) {
            kind("weighed before trimming", before.nodes());
            nodes.nodes("trims", before.trims());
        } else if (pattern instanceof Pattern.PoundsAsKilograms pounds) {
            kind("pounds as kilograms", pounds.nodes());
        }
    }

    private void kind(String kind, List<Integer> readings) throws IOException {
        json.writeStringField("pattern", kind);
        nodes.nodes("readings", readings);
    }

    private void balanced() throws IOException {
        json.writeArrayFieldStart("balanced");
        for (int v = 0; v < plan.size(); v++) {
            Reconciled weight = report.test().reconciled().weight(v);
            json.writeStartObject();
            nodes.node(v);
            json.writeBooleanField("weighed", report.test().reading(v).isPresent());
            if (weight instanceof Reconciled.Weight known) {
                nodes.estimate("weight", known.estimate());
                if (v > 0 && report.test().share(v).isPresent()) {
                    json.writeNumberField("share", report.test().share(v).get().ofMeans());
                }
            }
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    /** Once for each cut, not once for each of its parts: there may be many. */
    private void together() throws IOException {
        json.writeArrayFieldStart("onlyTogether");
        int last = -1;
        for (int v = 1; v < plan.size(); v++) {
            int cut = plan.node(v).above();
            if (cut != last && report.test().reconciled().weight(v) instanceof Reconciled.OnlyTogether open) {
                last = cut;
                json.writeStartObject();
                nodes.nodes("parts", open.parts());
                nodes.estimate("sum", open.sum());
                json.writeEndObject();
            }
        }
        json.writeEndArray();
    }

    private void whereItWent() throws IOException {
        json.writeArrayFieldStart("whereItWent");
        for (WhereItWent.Share share : report.whereItWent().shares()) {
            json.writeStartObject();
            json.writeStringField("sort", word(share.sort()));
            json.writeNumberField("weight", share.kilograms());
            if (share.isStated()) {
                json.writeNumberField("expected", share.expected());
            }
            known("difference", share.difference());
            json.writeEndObject();
        }
        json.writeEndArray();
    }
}
