package dev.gambrel.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/**
 * Writes a file whole or not at all: under its final name there is never half of it. A link is followed; what is not a
 * regular file is left alone, and no folder is made.
 */
final class WholeFile {
    private WholeFile() {}

    static boolean write(Path file, String text) {
        try {
            Path target = Files.exists(file) ? file.toRealPath() : file.toAbsolutePath();
            Path folder = target.getParent();
            if (folder == null || Files.exists(target) && !Files.isRegularFile(target)) {
                return false;
            }
            Path half = folder.resolve("." + target.getFileName() + ".part");
            try {
                Files.write(half, text.getBytes(StandardCharsets.UTF_8), StandardOpenOption.CREATE_NEW);
                Files.move(half, target, StandardCopyOption.REPLACE_EXISTING);
                return true;
            } finally {
                Files.deleteIfExists(half);
            }
        } catch (IOException cannotWrite) {
            return false;
        }
    }

    /** Whether two names are of one file that is there. */
    static boolean isSame(Path one, Path other) {
        try {
            return Files.exists(one) && Files.exists(other) && Files.isSameFile(one, other);
        } catch (IOException cannotTell) {
            return false;
        }
    }
}
