package dev.gambrel.benchmarks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.compiler.Compilation;
import dev.gambrel.tree.Cut;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import software.amazon.smithy.model.shapes.ShapeId;

class ReadingBenchmarkTest {
    private final ReadingBenchmark benchmark = new ReadingBenchmark();

    @BeforeEach
    void a_sheet_of_150_parts() {
        benchmark.parts = 150;
        benchmark.prepare();
    }

    @Test
    void the_specification_compiles() {
        Compilation compilation = benchmark.compile().orElseThrow();
        assertEquals(8, compilation.tree().parts().size());
    }

    @Test
    void the_bare_parse_reaches_the_end() {
        assertTrue(benchmark.bareParse().getChildCount() > 8);
    }

    @Test
    void the_yaml_holds_the_joints_of_the_carcass() {
        var cuts = benchmark.yamlAndSchema().get("cuts");
        assertEquals(5, cuts.size());
        assertEquals("leg", cuts.get(0).get("name").textValue());
    }

    @Test
    void the_model_has_a_structure_for_each_cut() {
        var carcass = benchmark
                .smithyAssemble()
                .expectShape(ShapeId.from("dev.gambrel.benchmarks#HouseHogget"))
                .asStructureShape()
                .orElseThrow();
        long cuts = benchmark.compile().orElseThrow().tree().parts().stream()
                .filter(part -> part instanceof Cut)
                .count();
        assertEquals(8, carcass.members().size());
        assertEquals(
                cuts,
                carcass.members().stream()
                        .filter(member -> member.getTarget().getName().matches(".*[0-9]"))
                        .count());
    }
}
