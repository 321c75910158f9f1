package dev.gambrel.json.located;

import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.text.Span;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** One JSON object while it is read: asked for its fields one by one, and then for any that nobody asked for. Not thread-safe. */
public final class ObjectReader {
    private final Located.Fields object;
    private final Findings findings;
    private final Set<String> asked = new LinkedHashSet<>();
    private final Map<String, Diagnostic> missing = new LinkedHashMap<>();

    ObjectReader(Located.Fields object, Findings findings) {
        this.object = object;
        this.findings = findings;
    }

    /** Where there is nothing to read, and nobody is told so again. */
    static ObjectReader ofNothing(Located value, Findings findings) {
        return new ObjectReader(new Located.Fields(value.pointer(), value.span(), Map.of()), findings.muted());
    }

    /**
     * Reads no further: what the rest of the object means cannot be told.
     *
     * @return an object without fields, of which nothing is told
     */
    public ObjectReader givenUp() {
        asked.addAll(object.fields().keySet());
        return ofNothing(object, findings);
    }

    /**
     * Where the object stands.
     *
     * @return all of it
     */
    public Place.InText place() {
        return findings.place(object.span());
    }

    /**
     * Whether a field says a word.
     *
     * @param field its name
     * @param word the word
     * @return true if it does
     */
    public boolean says(String field, String word) {
        Located.Field found = object.fields().get(field);
        return found != null
                && found.value() instanceof Located.Text text
                && text.text().equals(word);
    }

    /**
     * Whether there is a field.
     *
     * @param field its name
     * @return true if there is
     */
    public boolean has(String field) {
        return object.fields().containsKey(field);
    }

    /**
     * A field that must be there.
     *
     * @param field its name
     * @param what what completes the sentence "it must say …"
     * @param reading what to make of it
     * @param <T> what is made
     * @return what it says, or a stand-in
     */
    public <T> T need(String field, String what, Reading<T> reading) {
        asked.add(field);
        Located.Field found = object.fields().get(field);
        if (found != null) {
            return reading.read(found.value(), findings);
        }
        Located.Pointer pointer = object.pointer().then(field);
        Span brace = new Span(object.span().start(), object.span().start() + 1);
        missing.put(field, findings.at(JsonCode.MISSING_FIELD, pointer, brace).with("allowed", what));
        return reading.read(new Located.Literal(pointer, brace, "null"), findings.muted());
    }

    /**
     * A field that may be there.
     *
     * @param field its name
     * @param absent what holds where it is not
     * @param reading what to make of it
     * @param <T> what is made
     * @return what it says, or a stand-in
     */
    public <T> T optional(String field, T absent, Reading<T> reading) {
        asked.add(field);
        Located.Field found = object.fields().get(field);
        return found == null ? absent : reading.read(found.value(), findings);
    }

    /**
     * A field with a list.
     *
     * @param field its name
     * @param item what to make of each item
     * @param <T> what is made
     * @return nothing in it where the field is not there
     */
    public <T> List<T> list(String field, Reading<T> item) {
        return optional(field, List.of(), Readings.list(item));
    }

    /** Reports every field that nobody asked for or that was not there; one that is only misspelt is reported once. */
    void end() {
        Set<String> free = new LinkedHashSet<>(asked);
        free.removeAll(object.fields().keySet());
        for (Map.Entry<String, Located.Field> field : object.fields().entrySet()) {
            if (!asked.contains(field.getKey())) {
                unknown(field.getKey(), field.getValue(), free);
            }
        }
        missing.values().forEach(findings::add);
    }

    private void unknown(String name, Located.Field field, Set<String> free) {
        Diagnostic finding = findings.at(JsonCode.UNKNOWN_FIELD, object.pointer(), field.name())
                .with("found", Shown.of(name));
        Optional<String> meant = Shown.nearest(name, free);
        meant.ifPresent(missing::remove);
        findings.add(finding.help(meant.map(Shown::question).orElse("Known here: " + Shown.list(asked) + ".")));
    }
}
