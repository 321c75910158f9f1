package dev.gambrel.yields;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.tree.inspection.TreeCode;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class YieldCodeTest {
    private static final List<YieldCode> CODES = List.of(YieldCode.values());

    @Test
    void findings_about_weights_are_numbered_from_1001() {
        for (int i = 0; i < CODES.size(); i++) {
            assertEquals("G" + (1001 + i), CODES.get(i).id());
        }
    }

    @Test
    void no_finding_shares_its_name_with_another() {
        Set<String> slugs = new HashSet<>();
        CODES.forEach(code -> assertTrue(slugs.add(code.slug()), code.slug()));
        Arrays.stream(TreeCode.values()).forEach(code -> assertTrue(slugs.add(code.slug()), code.slug()));
    }

    @Test
    void every_sentence_is_whole() {
        for (YieldCode code : CODES) {
            assertTrue(Character.isUpperCase(code.pattern().charAt(0)), code.pattern());
            assertTrue(code.pattern().endsWith(".") || code.pattern().endsWith("{question}"), code.pattern());
        }
    }
}
