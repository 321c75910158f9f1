package dev.gambrel.tree.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.tree.inspection.TreeCode;
import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class TreeCodeTest {
    @Test
    void no_number_and_no_name_is_used_twice() {
        Set<String> ids = new HashSet<>();
        Set<String> slugs = new HashSet<>();
        for (TreeCode code : TreeCode.values()) {
            assertTrue(ids.add(code.id()), code.id());
            assertTrue(slugs.add(code.slug()), code.slug());
        }
    }

    @ParameterizedTest
    @EnumSource(TreeCode.class)
    void a_finding_is_a_full_sentence_with_a_stable_number_and_name(TreeCode code) {
        assertTrue(code.id().matches("G[0-9]{4}"));
        assertEquals(code.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-'), slugOf(code));
        assertTrue(code.pattern().matches("[A-Z“].*\\."));
    }

    /** The one kind whose name says more than its constant. */
    private static String slugOf(TreeCode code) {
        return code == TreeCode.TOO_DEEP ? "too-deep" : code.slug();
    }
}
