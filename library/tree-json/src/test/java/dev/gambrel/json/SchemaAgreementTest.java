package dev.gambrel.json;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Whatever is done to one field of a sound file, reader and schema agree on whether it is still sound. */
class SchemaAgreementTest {
    private static final ObjectMapper MAPPER = new ObjectMapper();

    /** One field, taken out or given another value. */
    private record Change(ObjectNode object, String field, String value) {
        private static final List<String> VALUES = List.of(
                "", "null", "true", "\"x\"", "\"\"", "\"a/b\"", "7", "-1", "0.5", "[]", "[7]", "[\"x\"]", "[{}]", "{}");

        static Stream<Change> of(ObjectNode object, String field) {
            return VALUES.stream().map(value -> new Change(object, field, value));
        }

        void make() {
            try {
                if (value.isEmpty()) {
                    object.remove(field);
                } else {
                    object.set(field, MAPPER.readTree(value));
                }
            } catch (JsonProcessingException e) {
                throw new AssertionError(e);
            }
        }
    }

    private static List<ObjectNode> objects(JsonNode node) {
        List<ObjectNode> found = new ArrayList<>();
        if (node instanceof ObjectNode object) {
            found.add(object);
        }
        node.forEach(inner -> found.addAll(objects(inner)));
        return found;
    }

    private static List<String> fields(ObjectNode object) {
        List<String> names = new ArrayList<>();
        object.fieldNames().forEachRemaining(names::add);
        names.add("unheardOf");
        return names;
    }

    private static void bothJudgeAlike(JsonNode root, String told) {
        String json = root.toPrettyString();
        List<String> reader = Fixtures.read(json).diagnostics().stream()
                .map(finding -> Fixtures.Found.of(finding).message())
                .toList();
        List<String> schema = Schema.faults(json);
        assertEquals(reader.isEmpty(), schema.isEmpty(), () -> told + "\nreader: " + reader + "\nschema: " + schema);
    }

    @Test
    void every_field_of_the_hogget_changed_in_every_way_is_judged_alike() throws Exception {
        everyChangeIsJudgedAlike(Fixtures.marramHogget());
    }

    @Test
    void every_field_of_one_of_every_kind_changed_in_every_way_is_judged_alike() throws Exception {
        everyChangeIsJudgedAlike(Fixtures.everyKind());
    }

    private static void everyChangeIsJudgedAlike(String json) throws JsonProcessingException {
        JsonNode file = MAPPER.readTree(json);
        List<Change> changes = objects(file).stream()
                .flatMap(object -> fields(object).stream().flatMap(field -> Change.of(object, field)))
                .toList();
        String sound = file.toString();
        for (Change change : changes) {
            JsonNode before = change.object().get(change.field());
            change.make();
            bothJudgeAlike(file, change.toString());
            change.object().remove(change.field());
            if (before != null) {
                change.object().set(change.field(), before);
            }
        }
        assertEquals(MAPPER.readTree(sound), file);
    }
}
