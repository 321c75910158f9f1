package dev.gambrel.benchmarks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.tree.Cut;
import dev.gambrel.tree.Part;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SheetTest {
    @ParameterizedTest
    @ValueSource(ints = {100, 150, 151, 999, 3_000, 10_000})
    void a_sheet_has_as_many_parts_as_were_asked_for(int parts) {
        assertEquals(parts, parts(Sheet.of(parts).tree().parts()));
    }

    @Test
    void the_sheet_of_the_yields_is_the_smallest_with_500_cuts() {
        assertTrue(cuts(Sheet.of(YieldsBenchmark.PARTS).tree().parts()) >= 500);
        assertTrue(cuts(Sheet.of(YieldsBenchmark.PARTS - 1).tree().parts()) < 500);
    }

    @Test
    void the_schema_refuses_a_stream_that_there_is_not() {
        String yaml = Sheet.of(150).yaml();
        assertThrows(
                IllegalArgumentException.class, () -> new YamlReading().read(yaml.replace("to: mince", "to: mints")));
    }

    @Test
    void the_schema_refuses_a_share_above_all_of_the_cut() {
        String yaml = Sheet.of(150).yaml();
        assertRefused(
                "must have a maximum value of 100",
                () -> new YamlReading().read(yaml.replace("mean: 4.0", "mean: 400")));
    }

    @Test
    void the_model_refuses_a_stream_that_there_is_not() {
        String smithy = Sheet.of(150).smithy();
        assertRefused(
                "| TraitValue", () -> new SmithyReading().read(smithy.replace("@to(\"mince\")", "@to(\"mints\")")));
    }

    @Test
    void the_model_refuses_a_share_above_all_of_the_cut() {
        String smithy = Sheet.of(150).smithy();
        assertRefused("| TraitValue", () -> new SmithyReading().read(smithy.replace("mean: 4.0", "mean: 400")));
    }

    private static void assertRefused(String why, Executable reading) {
        String message = assertThrows(RuntimeException.class, reading).getMessage();
        assertTrue(message.contains(why), message);
    }

    private static int parts(List<Part> parts) {
        return parts.size()
                + parts.stream()
                        .mapToInt(part -> part instanceof Cut cut ? parts(cut.parts()) : 0)
                        .sum();
    }

    private static int cuts(List<Part> parts) {
        return parts.stream()
                .mapToInt(part -> part instanceof Cut cut ? 1 + cuts(cut.parts()) : 0)
                .sum();
    }
}
