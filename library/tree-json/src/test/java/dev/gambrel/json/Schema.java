package dev.gambrel.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.util.List;

/** Holds JSON against the published schema. */
final class Schema {
    private static final JsonSchema SCHEMA =
            JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012).getSchema(TreeJsonSchema.text());

    /** Takes the longest numbers that a tree can hold, which are longer than Jackson takes unasked. */
    private static final ObjectMapper MAPPER = new ObjectMapper(JsonFactory.builder()
            .streamReadConstraints(
                    StreamReadConstraints.builder().maxNumberLength(20_000).build())
            .build());

    private Schema() {}

    static List<String> faults(String json) {
        try {
            return SCHEMA.validate(MAPPER.readTree(json)).stream()
                    .map(Object::toString)
                    .toList();
        } catch (JsonProcessingException e) {
            throw new AssertionError(json, e);
        }
    }
}
