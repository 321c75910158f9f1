package dev.gambrel.cli.json;

import com.fasterxml.jackson.core.JsonGenerator;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.Specification;
import dev.gambrel.tree.portion.Outside;
import dev.gambrel.yields.conformance.Answer;
import dev.gambrel.yields.conformance.Conformity;
import dev.gambrel.yields.conformance.Inside;
import dev.gambrel.yields.conformance.Margin;
import dev.gambrel.yields.conformance.MeanWanted;
import dev.gambrel.yields.conformance.Product;
import dev.gambrel.yields.conformance.ProductAnswer;
import dev.gambrel.yields.conformance.Verdict;
import dev.gambrel.yields.conformance.clause.Clause;
import dev.gambrel.yields.conformance.clause.Stated;
import dev.gambrel.yields.conformance.report.ComparedTexts;
import dev.gambrel.yields.conformance.report.FindingPlaces;
import java.io.IOException;
import java.util.List;
import java.util.Locale;

/**
 * An answer clause by clause as JSON. Limits and margins are exact in the unit in which they are laid down; expected weights are
 * kilograms and shares run from 0 to 1, both unrounded.
 */
public final class ConformityJson {
    private final JsonGenerator json;
    private final ComparedTexts texts;

    private ConformityJson(JsonGenerator json, ComparedTexts texts) {
        this.json = json;
        this.texts = texts;
    }

    /**
     * Writes an answer.
     *
     * @param conformity the answer
     * @param texts the texts that were compared
     * @return a JSON object, ended by a line feed
     */
    public static String write(Conformity conformity, ComparedTexts texts) {
        return Canonical.text(json -> new ConformityJson(json, texts).write(conformity));
    }

    private void write(Conformity conformity) throws IOException {
        json.writeStartObject();
        json.writeStringField("format", "gambrel conformity");
        json.writeNumberField("version", 1);
        text("house", texts.house(), conformity.house());
        text("buyer", texts.buyer(), conformity.buyer());
        json.writeStringField("overall", conformity.overall().words());
        json.writeObjectFieldStart("counts");
        for (Verdict verdict : Verdict.values()) {
            json.writeNumberField(verdict.words(), conformity.count(verdict));
        }
        json.writeEndObject();
        json.writeArrayFieldStart("products");
        for (ProductAnswer product : conformity.products()) {
            product(product);
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private void text(String field, ComparedTexts.Text text, Specification specification) throws IOException {
        json.writeObjectFieldStart(field);
        json.writeStringField("file", text.name());
        json.writeStringField("title", specification.title());
        json.writeNumberField("revision", specification.revision());
        json.writeEndObject();
    }

    private void product(ProductAnswer product) throws IOException {
        json.writeStartObject();
        path("asked", product.asked());
        json.writeArrayFieldStart("matched");
        for (Product matched : product.matched()) {
            json.writeStartObject();
            json.writeStringField("kind", matched.kind().name().toLowerCase(Locale.ROOT));
            path("path", matched.path());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("findings");
        for (Diagnostic finding : product.findings()) {
            reason(finding);
        }
        json.writeEndArray();
        json.writeArrayFieldStart("clauses");
        for (Answer answer : product.answers()) {
            answer(answer);
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private void path(String field, TreePath path) throws IOException {
        json.writeArrayFieldStart(field);
        for (TradeName name : path.names()) {
            json.writeString(name.text());
        }
        json.writeEndArray();
    }

    private void answer(Answer answer) throws IOException {
        json.writeStartObject();
        json.writeStringField("about", answer.asked().clause().quality().words());
        json.writeStringField("verdict", answer.verdict().words());
        json.writeFieldName("asked");
        stated(answer.asked(), texts.buyer());
        json.writeArrayFieldStart("held");
        for (Stated held : answer.held()) {
            stated(held, texts.house());
        }
        json.writeEndArray();
        if (answer.margin() instanceof Margin.At at) {
            json.writeObjectFieldStart("margin");
            json.writeStringField("end", end(at.end()));
            quantity("amount", at.amount());
            json.writeEndObject();
        }
        json.writeArrayFieldStart("expected");
        for (Inside inside : answer.inside()) {
            inside(inside, answer.asked().clause());
        }
        json.writeEndArray();
        json.writeFieldName("reason");
        reason(answer.reason());
        json.writeEndObject();
    }

    private static String end(Margin.End end) {
        return end.name().toLowerCase(Locale.ROOT);
    }

    private void stated(Stated stated, ComparedTexts.Text in) throws IOException {
        json.writeStartObject();
        json.writeStringField("words", stated.clause().words());
        if (stated.clause() instanceof Clause.Limited limited) {
            if (limited.limit().least().isPresent()) {
                quantity("least", limited.limit().least().get());
            }
            if (limited.limit().most().isPresent()) {
                quantity("most", limited.limit().most().get());
            }
            if (limited.outside() instanceof Outside.OutOf some) {
                json.writeObjectFieldStart("outside");
                json.writeNumberField("most", some.most());
                json.writeNumberField("of", some.of());
                json.writeEndObject();
            }
        }
        json.writeFieldName("place");
        DiagnosticJson.place(json, in.written().apply(stated.at()));
        json.writeEndObject();
    }

    private void quantity(String field, Quantity quantity) throws IOException {
        json.writeObjectFieldStart(field);
        json.writeNumberField("amount", quantity.amount());
        json.writeStringField("unit", quantity.unit().symbol());
        json.writeEndObject();
    }

    private void inside(Inside inside, Clause asked) throws IOException {
        json.writeStartObject();
        json.writeStringField("of", inside.of());
        json.writeNumberField("mean", inside.weight().aim());
        json.writeNumberField("deviation", inside.weight().deviation());
        json.writeNumberField("inside", inside.within());
        json.writeNumberField("light", inside.light());
        json.writeNumberField("heavy", inside.heavy());
        if (inside.of().isEmpty() && asked instanceof Clause.Limited limited) {
            json.writeArrayFieldStart("meansWanted");
            for (MeanWanted wanted : MeanWanted.of(inside, limited.limit())) {
                json.writeStartObject();
                json.writeStringField("end", end(wanted.end()));
                json.writeNumberField("mean", wanted.mean());
                json.writeNumberField("outside", MeanWanted.OUTSIDE);
                json.writeEndObject();
            }
            json.writeEndArray();
        }
        json.writeEndObject();
    }

    private void reason(Diagnostic reason) throws IOException {
        json.writeStartObject();
        json.writeStringField("code", reason.code().id());
        json.writeStringField("message", reason.message());
        FindingPlaces places = FindingPlaces.of(reason);
        place("buyer", texts.buyer(), places.buyer());
        place("house", texts.house(), places.house());
        json.writeArrayFieldStart("help");
        for (String help : reason.help()) {
            json.writeString(help);
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private void place(String field, ComparedTexts.Text in, List<Place> places) throws IOException {
        json.writeArrayFieldStart(field);
        for (Place place : places) {
            DiagnosticJson.place(json, in.written().apply(place));
        }
        json.writeEndArray();
    }
}
