package dev.gambrel.cli.json;

import com.fasterxml.jackson.core.JsonGenerator;
import dev.gambrel.cli.shares.report.Proposed;
import dev.gambrel.cli.shares.report.SharesReport;
import dev.gambrel.compiler.restate.RestatedCut;
import dev.gambrel.compiler.restate.RestatedShare;
import dev.gambrel.compiler.restate.RestatedText;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.text.TradeName;
import dev.gambrel.yields.figure.Interval;
import dev.gambrel.yields.figure.Spread;
import dev.gambrel.yields.plan.Kind;
import dev.gambrel.yields.testedcuts.FoundShare;
import dev.gambrel.yields.testedcuts.FoundShares;
import dev.gambrel.yields.testedcuts.LeftOut;
import dev.gambrel.yields.testedcuts.Prior;
import dev.gambrel.yields.testedcuts.TestedCut;
import dev.gambrel.yields.testedcuts.TestedPart;
import java.io.IOException;
import java.util.List;
import java.util.Locale;

/** A house's own shares as JSON, unrounded, in per cent of the cut. What is not known is left out. */
public final class SharesJson {
    private static final double PERCENT = 100;

    private final JsonGenerator json;

    private SharesJson(JsonGenerator json) {
        this.json = json;
    }

    /**
     * Writes what the sheets of a house say of its shares.
     *
     * @param report the shares
     * @param proposed what its specification may state instead
     * @return a JSON object, ended by a line feed
     */
    public static String write(SharesReport report, Proposed proposed) {
        return Canonical.text(json -> new SharesJson(json).all(report, proposed));
    }

    private void all(SharesReport report, Proposed proposed) throws IOException {
        json.writeStartObject();
        json.writeStringField("format", "gambrel shares of a house");
        json.writeNumberField("version", 1);
        json.writeStringField("unit", "%");
        json.writeStringField("mean", report.mean().name().toLowerCase(Locale.ROOT));
        if (report.prior() instanceof Prior.Stated stated) {
            json.writeNumberField("statedCountsAsTests", stated.worth().tests());
        }
        json.writeArrayFieldStart("sheets");
        for (var sheet : report.sheets()) {
            json.writeString(sheet.name());
        }
        json.writeEndArray();
        json.writeArrayFieldStart("cuts");
        for (FoundShares shares : report.found()) {
            cut(shares);
        }
        json.writeEndArray();
        json.writeArrayFieldStart("notFound");
        for (TestedCut.NotFound cut : report.notFound()) {
            json.writeStartObject();
            path(cut.path());
            leftOut(cut.leftOut());
            json.writeEndObject();
        }
        json.writeEndArray();
        proposed(proposed);
        json.writeEndObject();
    }

    private void path(TreePath path) throws IOException {
        json.writeArrayFieldStart("path");
        for (TradeName name : path.names()) {
            json.writeString(name.text());
        }
        json.writeEndArray();
    }

    private void cut(FoundShares shares) throws IOException {
        json.writeStartObject();
        path(shares.cut().path());
        json.writeNumberField("tests", shares.number());
        json.writeNumberField("weightOfTests", shares.ownWeight());
        json.writeArrayFieldStart("parts");
        for (FoundShare share : shares.shares()) {
            json.writeStartObject();
            part(share.part());
            json.writeNumberField("found", PERCENT * share.share());
            straying(share, shares.moved().contains(share));
            json.writeEndObject();
        }
        for (TestedPart loss : shares.cut().kept()) {
            json.writeStartObject();
            part(loss);
            json.writeBooleanField("notWeighed", true);
            json.writeEndObject();
        }
        json.writeEndArray();
        if (shares.cut().meanMissing().isPresent()) {
            json.writeNumberField(
                    "missing", PERCENT * shares.cut().meanMissing().getAsDouble());
        }
        leftOut(shares.cut().leftOut());
        json.writeEndObject();
    }

    private void part(TestedPart part) throws IOException {
        path(part.path());
        if (part.kind() == Kind.TRIMMED) {
            json.writeBooleanField("trimmed", true);
        }
        if (part.isStated()) {
            json.writeNumberField("stated", PERCENT * part.stated().mean());
            if (part.stated().spread() instanceof Spread.Stated spread) {
                json.writeNumberField("statedDeviation", PERCENT * spread.standardDeviation());
            }
        }
    }

    private void straying(FoundShare share, boolean isMoved) throws IOException {
        if (share.straying() instanceof FoundShare.Told told) {
            json.writeNumberField("deviationBetweenCarcasses", PERCENT * told.betweenCarcasses());
            json.writeNumberField("deviationOfMean", PERCENT * told.ofMean());
            range("mean95", told.mean95());
            range("next95", told.next95());
            json.writeBooleanField("drownedByWeighing", told.isDrowned());
            json.writeBooleanField("moved", isMoved);
        }
    }

    private void range(String name, Interval range) throws IOException {
        json.writeArrayFieldStart(name);
        json.writeNumber(PERCENT * range.low());
        json.writeNumber(PERCENT * range.high());
        json.writeEndArray();
    }

    private void leftOut(List<LeftOut> leftOut) throws IOException {
        json.writeArrayFieldStart("leftOut");
        for (LeftOut each : leftOut) {
            json.writeStartObject();
            json.writeStringField("sheet", each.test());
            if (each instanceof LeftOut.PartsNotKnown parts) {
                json.writeStringField("why", "parts not known");
                json.writeArrayFieldStart("parts");
                for (String part : parts.parts()) {
                    json.writeString(part);
                }
                json.writeEndArray();
            } else if (each instanceof LeftOut.Nothing nothing) {
                json.writeStringField("why", "part of nothing");
                json.writeStringField("part", nothing.part());
                json.writeNumberField("kilograms", nothing.kilograms());
            } else {
                json.writeStringField("why", "other parts");
            }
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void proposed(Proposed proposed) throws IOException {
        json.writeArrayFieldStart("proposed");
        for (RestatedCut cut : proposed.cuts()) {
            for (RestatedShare part : cut.parts()) {
                json.writeStartObject();
                path(part.part());
                json.writeNumberField("share", part.percent());
                if (part.spread() instanceof RestatedShare.Points points) {
                    json.writeNumberField("deviation", points.points());
                }
                json.writeStringField("source", cut.source().name().text());
                json.writeStringField("sourceWords", cut.source().citation());
                json.writeEndObject();
            }
        }
        json.writeEndArray();
        json.writeArrayFieldStart("patches");
        for (RestatedText text : proposed.texts()) {
            json.writeStartObject();
            json.writeStringField("file", text.before().name());
            json.writeStringField("patch", text.diff());
            json.writeEndObject();
        }
        json.writeEndArray();
    }
}
