package dev.gambrel.conformance.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.compiler.SpecCompiler;
import dev.gambrel.compiler.source.Sources;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.text.SourceText;
import java.util.List;
import net.jqwik.api.Example;

/**
 * A sound text is read once, straight through; only where that stops is it read again, line by line. What recovers from a
 * fault is a class of its own, so whether the machine ever had to load it tells whether there was a second reading.
 */
class TwoStagesLaws {
    private static final String RECOVERY = "dev.gambrel.compiler.parse.LineRecovery";
    private static final String SOUND = """
            language 1
            use "catalogue:sheep"
            specification "Marram hogget" revision 3 for sheep
            carcass cold, 20 kg to 24 kg
            stream mince, saleable
            cut leg 33 %, two per carcass
            rest -> mince
            """;

    @Example
    void a_sound_text_is_not_read_again() throws Exception {
        try (Machine machine = new Machine()) {
            assertEquals(0, machine.findings(SOUND));
            assertTrue(machine.hasLoaded("dev.gambrel.compiler.parse.SpecParser"));
            assertFalse(machine.hasLoaded(RECOVERY));
        }
    }

    @Example
    void a_text_whose_meaning_alone_is_wrong_is_not_read_again() throws Exception {
        try (Machine machine = new Machine()) {
            assertEquals(1, machine.findings(SOUND.replace("-> mince", "-> minse")));
            assertFalse(machine.hasLoaded(RECOVERY));
        }
    }

    @Example
    void a_text_with_a_line_that_cannot_be_read_is_read_again() throws Exception {
        try (Machine machine = new Machine()) {
            assertEquals(1, machine.findings(SOUND.replace("33 %,", "33 % (")));
            assertTrue(machine.hasLoaded(RECOVERY));
        }
    }

    @Example
    void the_second_reading_tells_of_every_line_that_cannot_be_read() {
        String broken = SOUND.replace("saleable", "saleable )")
                .replace("33 %,", "33 % (")
                .replace("rest ->", "rest -> (");
        List<Diagnostic> found = new SpecCompiler()
                .compile(new SourceText("hogget.cuts", broken), Sources.none())
                .diagnostics();
        assertEquals(
                List.of("G0201", "G0201", "G0201"),
                found.stream().map(finding -> finding.code().id()).toList());
    }
}
