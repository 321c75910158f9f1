package dev.gambrel.tree.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.tree.inspection.BenchCode;
import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class BenchCodeTest {
    @Test
    void no_number_and_no_name_is_used_twice() {
        Set<String> ids = new HashSet<>();
        Set<String> slugs = new HashSet<>();
        for (BenchCode code : BenchCode.values()) {
            assertTrue(ids.add(code.id()), code.id());
            assertTrue(slugs.add(code.slug()), code.slug());
        }
    }

    @ParameterizedTest
    @EnumSource(BenchCode.class)
    void a_finding_is_a_full_sentence_with_a_stable_number_and_name(BenchCode code) {
        assertTrue(code.id().matches("G[0-9]{4}"));
        assertEquals(code.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-'), code.slug());
        assertTrue(code.pattern().matches("[A-Z“].*\\."));
    }
}
