package dev.gambrel.json.located;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class JsonCodeTest {
    @Test
    void no_two_findings_share_an_identifier() {
        assertEquals(
                JsonCode.values().length,
                Arrays.stream(JsonCode.values()).map(JsonCode::id).distinct().count());
        assertEquals(
                JsonCode.values().length,
                Arrays.stream(JsonCode.values()).map(JsonCode::slug).distinct().count());
    }

    @ParameterizedTest
    @EnumSource
    void findings_about_json_are_numbered_from_G0901_in_order(JsonCode code) {
        assertEquals(String.format("G09%02d", code.ordinal() + 1), code.id());
    }

    @ParameterizedTest
    @EnumSource
    void a_finding_is_one_sentence(JsonCode code) {
        assertTrue(code.pattern().endsWith("."), code.pattern());
    }
}
