package dev.gambrel.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** Writes a file whole or not at all: under its final name there is never half of it. */
final class WholeFile {
    private WholeFile() {}

    static boolean write(Path file, String text) {
        Path target = file.toAbsolutePath();
        Path folder = target.getParent();
        if (folder == null || Files.isDirectory(target)) {
            return false;
        }
        try {
            Files.createDirectories(folder);
            Path half = Files.createTempFile(folder, ".gambrel-", ".part");
            try {
                Files.write(half, text.getBytes(StandardCharsets.UTF_8));
                Files.move(half, target, StandardCopyOption.REPLACE_EXISTING);
                return true;
            } finally {
                Files.deleteIfExists(half);
            }
        } catch (IOException cannotWrite) {
            return false;
        }
    }
}
