package dev.gambrel.cli;

import dev.gambrel.cli.terminal.ExitStatus;
import dev.gambrel.cli.terminal.Terminal;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** One run of the program with what it printed. */
public record Run(ExitStatus status, String out, String err) {
    /** A hogget that needs no catalogue; its shares close. */
    public static final String HOGGET = """
            language 1
            species sheep
            specification "Marram hogget" revision 3 for sheep
            carcass cold, 20 kg to 24 kg
            from warm to cold, loss chill shrink 2 %
            stream mince, saleable
            cut leg 33.0 % ± 0.9 %, two per carcass
            rest -> mince
            """;

    public static Run of(String... args) {
        return of(false, new byte[0], args);
    }

    public static Run inColour(String... args) {
        return of(true, new byte[0], args);
    }

    /** With something handed to the program. */
    public static Run reading(String handed, String... args) {
        return of(false, handed.getBytes(StandardCharsets.UTF_8), args);
    }

    private static Run of(boolean colour, byte[] handed, String... args) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        Terminal terminal = new Terminal(stream(out), stream(err), colour, new ByteArrayInputStream(handed));
        ExitStatus status = Gambrel.run(List.of(args), terminal);
        terminal.out().flush();
        terminal.err().flush();
        return new Run(status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    private static PrintStream stream(ByteArrayOutputStream bytes) {
        return new PrintStream(bytes, false, StandardCharsets.UTF_8);
    }

    public static String write(Path folder, String name, String text) {
        try {
            return Files.writeString(folder.resolve(name), text).toString();
        } catch (IOException full) {
            throw new java.io.UncheckedIOException(full);
        }
    }
}
