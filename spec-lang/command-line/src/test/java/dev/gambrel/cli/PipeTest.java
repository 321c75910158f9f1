package dev.gambrel.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** A pipe has no place in it that could be asked for, as a file has. */
class PipeTest {
    @Test
    void weights_may_come_through_a_pipe() throws IOException, InterruptedException {
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        Gambrel.class.getName(),
                        "packs",
                        "-",
                        "--nominal",
                        "200 g",
                        "--test",
                        "packer")
                .redirectErrorStream(true)
                .start();
        try (OutputStream pipe = process.getOutputStream()) {
            pipe.write("201 g\n202 g\n".getBytes(StandardCharsets.UTF_8));
        }
        String printed = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertEquals(0, process.waitFor(), printed);
        assertTrue(printed.contains("2 weighed"), printed);
    }
}
