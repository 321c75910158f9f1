package dev.gambrel.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SchemaId;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SpecVersion;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class SchemaTest {
    @Test
    void the_schema_is_itself_a_schema_of_draft_2020_12() {
        var meta = JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                .getSchema(SchemaLocation.of(SchemaId.V202012));
        assertEquals(List.of(), List.copyOf(meta.validate(TreeJsonSchema.text(), InputFormat.JSON)));
    }

    @Test
    void the_schema_carries_its_name() throws Exception {
        JsonNode schema = new ObjectMapper().readTree(TreeJsonSchema.text());
        assertEquals(TreeJsonSchema.ID, schema.get("$id").asText());
    }

    @Test
    void the_files_written_by_hand_keep_the_schema() {
        for (String json : List.of(Fixtures.SMALLEST, Fixtures.lamb(), Fixtures.marramHogget(), Fixtures.everyKind())) {
            assertEquals(List.of(), Schema.faults(json));
        }
    }

    static Stream<String> structurallyWrong() {
        String hogget = Fixtures.marramHogget();
        return Stream.of(
                Fixtures.SMALLEST.replace("\"version\": 1,", ""),
                Fixtures.SMALLEST.replace("\"version\": 1", "\"version\": 2"),
                Fixtures.SMALLEST.replace("gambrel cut tree", "price list"),
                Fixtures.SMALLEST.replace("\"revision\": 3", "\"revision\": \"3\""),
                Fixtures.SMALLEST.replace("\"revision\": 3", "\"revision\": 3.5"),
                Fixtures.SMALLEST.replace("\"revision\": 3", "\"revision\": -3"),
                Fixtures.SMALLEST.replace("\"revision\": 3", "\"revision\": null"),
                Fixtures.SMALLEST.replace("\"cold\"", "\"frozen\""),
                Fixtures.SMALLEST.replace("{\"name\": \"sheep\"}", "\"sheep\""),
                Fixtures.SMALLEST.replace("\"sheep\"", "\"a/b\""),
                Fixtures.SMALLEST.replace("\"sheep\"", "\"  \""),
                Fixtures.smallestWith("\"part\": []"),
                Fixtures.smallestWith("\"parts\": {}"),
                Fixtures.smallestWith("\"parts\": [{\"name\": \"leg\"}]"),
                Fixtures.smallestWith("\"parts\": [{\"kind\": \"cut\"}]"),
                Fixtures.smallestWith("\"parts\": [{\"kind\": \"joint\", \"name\": \"leg\"}]"),
                hogget.replace("\"sd\": 0.9, \"unit\": \"%\"", "\"sd\": 0.9"),
                hogget.replace("\"sd\": 0.9, \"unit\": \"%\"", "\"sd\": 0.9, \"unit\": \"kg\""),
                hogget.replace("\"mean\": 180, \"sd\": 5, \"unit\": \"g\"", "\"mean\": 180, \"unit\": \"grams\""),
                hogget.replace("\"mean\": 180, \"sd\": 5", "\"sd\": 5"),
                hogget.replace("\"mean\": 180, \"sd\": 5", "\"mean\": 180, \"low\": 170, \"high\": 190"),
                hogget.replace("\"mean\": 180, \"sd\": 5", "\"mean\": 180, \"sdUnit\": \"g\""),
                hogget.replace("\"mean\": 180, \"sd\": 5", "\"low\": 180"),
                hogget.replace("\"mean\": 33.0", "\"mean\": \"33.0\""),
                hogget.replace("\"pieces\": 2", "\"pieces\": 3"),
                hogget.replace("\"region\": \"sacral\", \"number\": 1", "\"region\": \"sacral\""),
                hogget.replace("\"region\": \"lumbar\"", "\"region\": \"lumbar\", \"number\": 6"),
                hogget.replace("\"where\": \"at any point\"", "\"where\": \"anywhere\""),
                hogget.replace("\"cervical\"", "\"neck\""),
                hogget.replace(", \"of\": \"carcass\"", ""),
                hogget.replace("{\"kind\": \"product\"}", "{\"kind\": \"product\", \"stream\": \"mince\"}"),
                hogget.replace("\"kind\": \"measured\"", "\"kind\": \"guess\""));
    }

    @ParameterizedTest
    @MethodSource("structurallyWrong")
    void what_the_reader_refuses_the_schema_refuses_too(String json) {
        assertFalse(Fixtures.read(json).diagnostics().isEmpty(), json);
        assertFalse(Schema.faults(json).isEmpty(), json);
    }

    @Test
    void every_example_of_a_fault_differs_from_its_original() {
        List<String> sound = List.of(Fixtures.SMALLEST, Fixtures.marramHogget());
        assertTrue(structurallyWrong().noneMatch(sound::contains));
    }
}
