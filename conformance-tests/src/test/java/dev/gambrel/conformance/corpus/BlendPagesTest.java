package dev.gambrel.conformance.corpus;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.blends.BlendCode;
import dev.gambrel.cli.Gambrel;
import dev.gambrel.cli.terminal.ExitStatus;
import dev.gambrel.cli.terminal.Terminal;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The pages about blends show what to type: the one is refused as the page says, the other is blended. */
class BlendPagesTest {
    @ParameterizedTest
    @EnumSource
    void the_wrong_example_shows_the_finding_and_no_other(BlendCode code) {
        String printed = run(ExplainPage.of(code).example("Wrong"), ExitStatus.FINDINGS);
        assertTrue(printed.startsWith("error " + code.id() + " (" + code.slug() + ") at "), printed);
        assertEquals(
                1, printed.lines().filter(line -> line.startsWith("error ")).count(), printed);
    }

    @ParameterizedTest
    @EnumSource
    void the_right_example_is_blended(BlendCode code) {
        String printed = run(ExplainPage.of(code).example("Right"), ExitStatus.FINE);
        assertTrue(printed.contains("The lean of all is that of what is taken."), printed);
    }

    private static String run(String example, ExitStatus expected) {
        List<String> args = Arrays.stream(example.strip().split("\\s*\n?gambrel |\"?\n| (?=\")"))
                .map(word -> word.replace("\"", ""))
                .filter(word -> !word.isEmpty())
                .toList();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        PrintStream out = new PrintStream(bytes, true, StandardCharsets.UTF_8);
        assertEquals(expected, Gambrel.run(args, new Terminal(out, out, false)), args.toString());
        return bytes.toString(StandardCharsets.UTF_8);
    }
}
