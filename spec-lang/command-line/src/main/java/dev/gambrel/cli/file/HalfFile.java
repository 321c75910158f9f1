package dev.gambrel.cli.file;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFileAttributeView;

/** A file under way: it gets its name when it is finished, and is gone when it is not. */
public final class HalfFile implements AutoCloseable {
    private static final int BUFFER = 1 << 16;

    private final Path target;
    private final Path half;
    private final OutputStream out;

    private HalfFile(Path target, Path half) throws IOException {
        this.target = target;
        this.half = half;
        this.out = new BufferedOutputStream(Files.newOutputStream(half), BUFFER);
    }

    /**
     * Begins a file beside where it shall be.
     *
     * @param file where it shall be
     * @return a file to be written
     * @throws IOException if it may not be written there
     */
    public static HalfFile of(Path file) throws IOException {
        Path target = Files.exists(file) ? file.toRealPath() : file.toAbsolutePath();
        Path folder = target.getParent();
        boolean mayReplace = Files.isRegularFile(target) && Files.isWritable(target);
        if (folder == null || Files.exists(target) && !mayReplace) {
            throw new IOException("not a file that may be written");
        }
        Path half = folder.resolve("." + target.getFileName() + ".part");
        Files.createFile(half);
        try {
            keepReaders(half, target);
            return new HalfFile(target, half);
        } catch (IOException cannotWrite) {
            Files.deleteIfExists(half);
            throw cannotWrite;
        }
    }

    /** Before its first byte is written, who may read it is whoever may read what it replaces. */
    private static void keepReaders(Path half, Path target) throws IOException {
        PosixFileAttributeView old = Files.getFileAttributeView(target, PosixFileAttributeView.class);
        if (old != null && Files.exists(target)) {
            Files.setPosixFilePermissions(half, old.readAttributes().permissions());
        }
    }

    /**
     * Where it is written.
     *
     * @return a stream
     */
    public OutputStream out() {
        return out;
    }

    /**
     * Gives it its name.
     *
     * @throws IOException if it could not be written to its end
     */
    public void finish() throws IOException {
        out.close();
        Files.move(half, target, StandardCopyOption.ATOMIC_MOVE);
    }

    @Override
    public void close() throws IOException {
        out.close();
        Files.deleteIfExists(half);
    }
}
