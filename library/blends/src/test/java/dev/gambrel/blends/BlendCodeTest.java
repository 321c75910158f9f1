package dev.gambrel.blends;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.diagnostic.Severity;
import org.junit.jupiter.api.Test;

class BlendCodeTest {
    @Test
    void codes_are_of_the_nineteenth_hundred_and_all_stop_a_blend() {
        for (BlendCode code : BlendCode.values()) {
            assertTrue(code.id().startsWith("G19"), code.id());
            assertEquals(Severity.ERROR, code.severity());
        }
    }
}
