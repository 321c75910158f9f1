package dev.gambrel.cli.file;

import dev.gambrel.cli.terminal.ExitStatus;
import dev.gambrel.cli.terminal.Terminal;
import dev.gambrel.diagnostic.Visible;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Writes a file whole or not at all: under its final name there is never half of it. A link is followed and stays a
 * link; who may read and write a file that was there stays as it was. What is not a regular file, or may not be written,
 * is left alone, and no folder is made.
 */
public final class WholeFile {
    private WholeFile() {}

    /**
     * Writes a file.
     *
     * @param file where
     * @param text what shall stand in it, as UTF-8
     * @return whether it was written
     */
    public static boolean write(Path file, String text) {
        return write(file, text.getBytes(StandardCharsets.UTF_8));
    }

    /**
     * Writes a file.
     *
     * @param file where
     * @param bytes what shall stand in it
     * @return whether it was written
     */
    public static boolean write(Path file, byte[] bytes) {
        try (HalfFile half = HalfFile.of(file)) {
            half.out().write(bytes);
            half.finish();
            return true;
        } catch (IOException cannotWrite) {
            return false;
        }
    }

    /**
     * Says that a file could not be written.
     *
     * @param file its name as written on the command line
     * @param terminal where it is said
     * @return how the program ends
     */
    public static ExitStatus couldNot(String file, Terminal terminal) {
        terminal.err().println("The file " + Visible.text(file) + " cannot be written.");
        terminal.err().println("→ Look whether its folder is there, and who may write in it.");
        return ExitStatus.COULD_NOT;
    }

    /**
     * Whether two names are of one file that is there.
     *
     * @param one a name
     * @param other another
     * @return false where it cannot be told
     */
    public static boolean isSame(Path one, Path other) {
        try {
            return Files.exists(one) && Files.exists(other) && Files.isSameFile(one, other);
        } catch (IOException cannotTell) {
            return false;
        }
    }
}
