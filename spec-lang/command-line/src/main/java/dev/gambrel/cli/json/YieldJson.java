package dev.gambrel.cli.json;

import com.fasterxml.jackson.core.JsonGenerator;
import dev.gambrel.quantity.Unit;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.Home;
import dev.gambrel.tree.Portion;
import dev.gambrel.tree.Stream;
import dev.gambrel.tree.portion.MuscleArea;
import dev.gambrel.yields.ExpectedYields;
import dev.gambrel.yields.Outcome;
import dev.gambrel.yields.StreamYield;
import dev.gambrel.yields.YieldRow;
import dev.gambrel.yields.figure.Estimate;
import dev.gambrel.yields.figure.Interval;
import dev.gambrel.yields.figure.Spread;
import dev.gambrel.yields.lean.StreamLean;
import dev.gambrel.yields.lean.StreamLeans;
import dev.gambrel.yields.portions.MeanDoubt;
import dev.gambrel.yields.portions.NumberOfPortions;
import dev.gambrel.yields.portions.PortionYield;
import dev.gambrel.yields.portions.Promise;
import dev.gambrel.yields.working.Pairs;
import dev.gambrel.yields.working.WayUsed;
import java.io.IOException;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Expected yields as JSON, unrounded. A spread that is not stated is left out. */
public final class YieldJson {
    private static final double RARE = 1e-6;
    private static final int MOST_NUMBERS = 1000;

    private final JsonGenerator json;
    private final double perKilogram;
    private final List<Promise> promises;

    private YieldJson(JsonGenerator json, Unit unit, List<Promise> promises) {
        this.json = json;
        this.promises = promises;
        this.perKilogram = 1 / unit.factor().doubleValue();
    }

    /**
     * Writes yields.
     *
     * @param yields the yields
     * @param unit the unit of every weight
     * @param promises what is to be promised of each portion
     * @return a JSON object, ended by a line feed
     */
    public static String write(ExpectedYields yields, Unit unit, List<Promise> promises) {
        return Canonical.text(json -> new YieldJson(json, unit, promises).write(yields, unit.symbol()));
    }

    private void write(ExpectedYields yields, String unit) throws IOException {
        json.writeStartObject();
        json.writeStringField("format", "gambrel expected yields");
        json.writeNumberField("version", 1);
        json.writeStringField("specification", yields.tree().specification().title());
        json.writeNumberField("revision", yields.tree().specification().revision());
        json.writeStringField("species", yields.tree().species().name().text());
        json.writeStringField("unit", unit);
        json.writeStringField("basis", yields.given().basis().words());
        json.writeStringField("weighed", yields.given().mass().toString());
        if (!yields.pairs().equals(Pairs.ALIKE)) {
            json.writeNumberField("correlationOfPairs", yields.pairs().correlation());
        }
        ways(yields);
        json.writeArrayFieldStart("parts");
        for (YieldRow row : yields.rows()) {
            row(row);
        }
        json.writeEndArray();
        streams(yields);
        json.writeObjectFieldStart("totals");
        for (Outcome outcome : Outcome.values()) {
            json.writeFieldName(outcome.words());
            estimate(yields.total(outcome));
        }
        json.writeEndObject();
        json.writeArrayFieldStart("portions");
        for (PortionYield portion : PortionYield.of(yields)) {
            portion(portion);
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    /** Only where there are any, so that nothing changes for a specification without. */
    private void ways(ExpectedYields yields) throws IOException {
        if (yields.ways().isEmpty()) {
            return;
        }
        json.writeArrayFieldStart("ways");
        for (WayUsed way : yields.ways()) {
            json.writeStartObject();
            json.writeStringField("cut", way.cut().toString());
            json.writeStringField("workedAs", way.way().name().text());
            json.writeNumberField("percentOfPieces", 100 * way.split().pieces());
            json.writeNumberField("percentOfWeight", 100 * way.split().weight());
            json.writeStringField("because", way.because());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    static void pieces(JsonGenerator json, double pieces) throws IOException {
        if (pieces == Math.rint(pieces)) {
            json.writeNumberField("pieces", (int) pieces);
        } else {
            json.writeNumberField("pieces", pieces);
        }
    }

    /** What a line is called, what it is and where it stands. */
    static void named(JsonGenerator json, YieldRow row) throws IOException {
        json.writeStringField("name", row.name());
        json.writeStringField("kind", row.kind().name().toLowerCase(Locale.ROOT));
        json.writeArrayFieldStart("path");
        for (TradeName name : row.path().names()) {
            json.writeString(name.text());
        }
        json.writeEndArray();
    }

    private void row(YieldRow row) throws IOException {
        json.writeStartObject();
        named(json, row);
        pieces(json, row.pieces());
        weight("allPieces", row.allPieces());
        weight("onePiece", row.onePiece());
        if (row.percentOfCutAbove().isPresent()) {
            json.writeNumberField("percentOfCutAbove", row.percentOfCutAbove().getAsDouble());
        }
        if (row.percentOfCarcass().isPresent()) {
            json.writeNumberField("percentOfCarcass", row.percentOfCarcass().getAsDouble());
        }
        if (row.home().isPresent()) {
            json.writeStringField("goesTo", home(row.home().get()));
        }
        json.writeEndObject();
    }

    static String home(Home home) {
        return home instanceof Home.ToStream to ? to.stream().text() : "product";
    }

    private void streams(ExpectedYields yields) throws IOException {
        json.writeArrayFieldStart("streams");
        Map<Stream, StreamLean.Found> leans = new HashMap<>();
        for (StreamLean each : StreamLeans.of(yields)) {
            leans.put(each.stream(), each.found());
        }
        for (StreamYield stream : yields.streams()) {
            json.writeStartObject();
            json.writeStringField("name", stream.stream().name().text());
            json.writeStringField("kind", stream.stream().kind().words());
            if (stream.stream().lean() instanceof Stream.Lean.Stated lean) {
                json.writeNumberField("leanPercent", lean.percent().amount());
                json.writeStringField("leanJudged", lean.judged().words());
            }
            json.writeFieldName("weight");
            estimate(stream.weight());
            found(leans.get(stream.stream()));
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    /** How lean a stream comes out; left out where its sources do not say. */
    private void found(StreamLean.Found found) throws IOException {
        if (!(found instanceof StreamLean.Found.Known known)) {
            return;
        }
        json.writeObjectFieldStart("leanFound");
        json.writeNumberField("meanPercent", known.lean().percent().mean());
        if (known.lean().percent().spread() instanceof Spread.Stated stated) {
            json.writeNumberField("standardDeviationPoints", stated.standardDeviation());
        }
        if (known.range95().isPresent()) {
            json.writeNumberField("lowPercent", known.range95().get().low());
            json.writeNumberField("highPercent", known.range95().get().high());
        }
        json.writeStringField("judged", known.judged().words());
        json.writeEndObject();
    }

    private void portion(PortionYield portion) throws IOException {
        json.writeStartObject();
        json.writeStringField("cut", portion.from().cut().toString());
        json.writeStringField("portion", portion.from().portion().name().text());
        known("expectedNumberFromOne", portion.expectedNumber(), 1);
        if (portion.numberFromOne().isPresent()) {
            chances(portion.numberFromOne().get());
        }
        known("expectedNumberFromAll", portion.expectedNumberFromAll(), 1);
        known("chanceOfFewest", portion.chanceOfFewest(), 1);
        weight("eachPortion", portion.each());
        known("shareAccepted", portion.shareAccepted(), 1);
        known("shareTooLight", portion.shareTooLight(), 1);
        known("givenAwayOfEach", portion.givenAway(), perKilogram);
        known("lostToKerfOfOne", portion.lostToKerf(), perKilogram);
        known("expectedRemainderOfAll", portion.expectedRemainderOfAll(), perKilogram);
        Portion written = portion.from().portion();
        Optional<MuscleArea> area = MuscleArea.aimedAt(written.aim(), written.acceptance());
        if (area.isPresent()) {
            area(area.get());
            known("muscleOfPieceSquareCentimetres", portion.muscle(), 1);
        }
        promised(portion);
        json.writeEndObject();
    }

    /** Every number that comes once in a million pieces, unless there are too many to tell apart. */
    private void chances(NumberOfPortions number) throws IOException {
        known("numberDeviationFromOne", OptionalDouble.of(number.deviation()), 1);
        if (number.most() - number.fewest() >= MOST_NUMBERS) {
            return;
        }
        json.writeArrayFieldStart("numbersFromOne");
        for (long n = number.fewest(); n <= number.most(); n++) {
            if (number.chanceOf(n) >= RARE) {
                json.writeStartObject();
                json.writeNumberField("number", n);
                json.writeNumberField("chance", number.chanceOf(n));
                json.writeEndObject();
            }
        }
        json.writeEndArray();
    }

    /** Only where something is to be promised, so that nothing changes without. */
    private void promised(PortionYield portion) throws IOException {
        if (promises.isEmpty()) {
            return;
        }
        json.writeArrayFieldStart("promised");
        for (Promise promise : promises) {
            json.writeStartObject();
            json.writeNumberField("carcasses", promise.from().number());
            if (promise.from().doubt() instanceof MeanDoubt.FromTests from) {
                json.writeNumberField("cuttingTests", from.tests());
            }
            json.writeNumberField("certainty", promise.certainty());
            Optional<NumberOfPortions> number = portion.numberFrom(promise.from());
            if (number.isPresent()) {
                json.writeNumberField("expectedNumber", number.get().expected());
                json.writeNumberField("numberDeviation", number.get().deviation());
                json.writeNumberField("promised", number.get().promised(promise.certainty()));
            }
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void known(String name, OptionalDouble figure, double factor) throws IOException {
        if (figure.isPresent()) {
            json.writeNumberField(name, figure.getAsDouble() * factor);
        }
    }

    private void area(MuscleArea area) throws IOException {
        json.writeObjectFieldStart("muscleSquareCentimetres");
        if (area.least() > 0) {
            json.writeNumberField("least", area.least());
        }
        if (!Double.isInfinite(area.most())) {
            json.writeNumberField("most", area.most());
        }
        json.writeEndObject();
    }

    private void weight(String name, Optional<Estimate> weight) throws IOException {
        if (weight.isPresent()) {
            json.writeFieldName(name);
            estimate(weight.get());
        }
    }

    private void estimate(Estimate estimate) throws IOException {
        json.writeStartObject();
        json.writeNumberField("mean", estimate.mean() * perKilogram);
        if (estimate.spread() instanceof Spread.Stated stated) {
            json.writeNumberField("sd", stated.standardDeviation() * perKilogram);
        }
        Optional<Interval> range = estimate.weightRange95();
        if (range.isPresent()) {
            json.writeNumberField("low95", range.get().low() * perKilogram);
            json.writeNumberField("high95", range.get().high() * perKilogram);
        }
        json.writeEndObject();
    }
}
