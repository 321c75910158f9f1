package dev.gambrel.benchmarks;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;

/** YAML into nodes, held against a JSON Schema: the first peer. The schema is made ready beforehand. */
final class YamlReading {
    private final YAMLMapper mapper = new YAMLMapper();
    private final JsonSchema schema = JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
            .getSchema(Resources.text("sheet.schema.json"));

    YamlReading() {
        schema.initializeValidators();
    }

    /**
     * Reads and validates.
     *
     * @param yaml a document
     * @return its nodes
     * @throws IllegalArgumentException if the schema or the syntax does not allow it
     */
    JsonNode read(String yaml) {
        try {
            JsonNode document = mapper.readTree(yaml);
            var faults = schema.validate(document);
            if (!faults.isEmpty()) {
                throw new IllegalArgumentException(faults.iterator().next().getMessage());
            }
            return document;
        } catch (JsonProcessingException broken) {
            throw new IllegalArgumentException(broken);
        }
    }
}
