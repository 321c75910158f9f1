package dev.gambrel.cli.json;

import com.fasterxml.jackson.core.JsonGenerator;
import dev.gambrel.cli.compare.report.ComparedFile;
import dev.gambrel.cli.compare.report.ComparisonReport;
import dev.gambrel.cli.compare.report.ComparisonReport.Weights;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.text.Position;
import dev.gambrel.text.TradeName;
import dev.gambrel.yields.comparison.Amount;
import dev.gambrel.yields.comparison.AmountChange;
import dev.gambrel.yields.comparison.Change;
import dev.gambrel.yields.comparison.Effect;
import dev.gambrel.yields.comparison.PossibleRename;
import dev.gambrel.yields.comparison.Said;
import java.io.IOException;
import java.util.List;
import java.util.Locale;

/** What differs between two specifications as JSON. Quantities are exact; weights are kilograms, unrounded. */
public final class ComparisonJson {
    private final JsonGenerator json;
    private final ComparisonReport report;

    private ComparisonJson(JsonGenerator json, ComparisonReport report) {
        this.json = json;
        this.report = report;
    }

    /**
     * Writes a comparison.
     *
     * @param report what was compared
     * @return a JSON object, ended by a line feed
     */
    public static String write(ComparisonReport report) {
        return Canonical.text(json -> new ComparisonJson(json, report).write());
    }

    private void write() throws IOException {
        json.writeStartObject();
        json.writeStringField("format", "gambrel comparison");
        json.writeNumberField("version", 1);
        file("before", report.before());
        file("after", report.after());
        json.writeObjectFieldStart("counts");
        for (Effect effect : Effect.values()) {
            json.writeNumberField(
                    effect.words(), report.comparison().changes(effect).size());
        }
        json.writeEndObject();
        json.writeArrayFieldStart("changes");
        for (Change change : report.comparison().changes()) {
            change(change);
        }
        json.writeEndArray();
        json.writeArrayFieldStart("renames");
        for (PossibleRename rename : report.comparison().renames()) {
            json.writeStartObject();
            json.writeStringField("was", rename.was());
            json.writeStringField("is", rename.is());
            json.writeStringField("because", rename.because());
            json.writeEndObject();
        }
        json.writeEndArray();
        weights();
        json.writeEndObject();
    }

    private void file(String field, ComparedFile file) throws IOException {
        json.writeObjectFieldStart(field);
        json.writeStringField("file", file.name());
        json.writeStringField("specification", file.tree().specification().title());
        json.writeNumberField("revision", file.tree().specification().revision());
        json.writeEndObject();
    }

    private void change(Change change) throws IOException {
        json.writeStartObject();
        json.writeStringField("effect", change.effect().words());
        json.writeStringField("of", change.of());
        path("path", change.path());
        json.writeStringField(
                "aspect", change.aspect().name().toLowerCase(Locale.ROOT).replace('_', ' '));
        json.writeStringField("what", change.what());
        said("was", change.was(), report.before());
        said("is", change.is(), report.after());
        for (TreePath part : change.givesWay()) {
            path("givesWay", part);
        }
        json.writeEndObject();
    }

    private void path(String field, TreePath path) throws IOException {
        json.writeArrayFieldStart(field);
        for (TradeName name : path.names()) {
            json.writeString(name.text());
        }
        json.writeEndArray();
    }

    private void said(String field, Said said, ComparedFile in) throws IOException {
        json.writeObjectFieldStart(field);
        if (said instanceof Said.Stated stated) {
            json.writeStringField("words", stated.words());
            json.writeArrayFieldStart("quantities");
            for (Quantity quantity : stated.quantities()) {
                json.writeStartObject();
                json.writeNumberField("amount", quantity.amount());
                json.writeStringField("unit", quantity.unit().symbol());
                json.writeEndObject();
            }
            json.writeEndArray();
        } else {
            json.writeStringField("nothing", said instanceof Said.NotThere ? "not there" : "not stated");
        }
        if (in.written().apply(said.place()) instanceof Place.Written written) {
            place(written.text());
        }
        json.writeEndObject();
    }

    private void place(Place.InText place) throws IOException {
        Position position = place.text().position(place.span().start());
        json.writeStringField("file", place.text().name());
        json.writeNumberField("start", place.span().start());
        json.writeNumberField("end", place.span().end());
        json.writeNumberField("line", position.line());
        json.writeNumberField("column", position.column());
    }

    private void weights() throws IOException {
        json.writeObjectFieldStart("yields");
        if (report.yields() instanceof Weights.WorkedOut worked) {
            json.writeStringField("weighed", worked.lines().carcass().mass().toString());
            json.writeStringField("basis", worked.lines().carcass().basis().words());
            json.writeArrayFieldStart("remarks");
            for (String remark : worked.remarks()) {
                json.writeString(remark);
            }
            json.writeEndArray();
            amounts("products", worked.lines().products());
            amounts("streams", worked.lines().streams());
            amounts("outcomes", worked.lines().outcomes());
            amounts("portions", worked.lines().portions());
        } else {
            json.writeStringField("notWorkedOut", ((Weights.NotWorkedOut) report.yields()).because());
        }
        json.writeEndObject();
    }

    /** What is not there gives 0; what is not stated is left out. */
    private void amounts(String field, List<AmountChange> lines) throws IOException {
        json.writeArrayFieldStart(field);
        for (AmountChange line : lines) {
            json.writeStartObject();
            json.writeStringField("name", line.name());
            amount("before", line.before());
            amount("after", line.after());
            if (line.difference().isPresent()) {
                json.writeNumberField("difference", line.difference().getAsDouble());
            }
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void amount(String field, Amount amount) throws IOException {
        if (amount.known().isPresent()) {
            json.writeNumberField(field, amount.known().getAsDouble());
        }
    }
}
