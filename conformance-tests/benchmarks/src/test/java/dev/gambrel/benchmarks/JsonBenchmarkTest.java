package dev.gambrel.benchmarks;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

class JsonBenchmarkTest {
    @Test
    void json_reads_back_as_the_tree_that_it_was_written_from() {
        JsonBenchmark benchmark = new JsonBenchmark();
        benchmark.parts = 150;
        benchmark.prepare();
        String json = new String(benchmark.treeToJson(), StandardCharsets.UTF_8);
        assertEquals(benchmark.jsonToTree().orElseThrow(), Sheet.of(150).tree());
        assertEquals("leg", json.replaceAll("(?s).*?\"name\": \"(leg)\".*", "$1"));
    }
}
