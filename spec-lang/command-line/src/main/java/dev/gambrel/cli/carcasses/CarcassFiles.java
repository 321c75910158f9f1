package dev.gambrel.cli.carcasses;

import dev.gambrel.batches.BatchFiles;
import dev.gambrel.cli.argument.FileArgument;
import dev.gambrel.cli.file.HalfFile;
import dev.gambrel.cli.file.WholeFile;
import dev.gambrel.cli.terminal.Terminal;
import dev.gambrel.cli.verb.WrongUsage;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** The files of a batch, open. What is written gets its name only when all went well. */
final class CarcassFiles implements AutoCloseable {
    private final List<InputStream> open = new ArrayList<>();
    private final List<HalfFile> written = new ArrayList<>();
    private final List<ProgressLine> shown = new ArrayList<>();
    private final Terminal terminal;
    private final CarcassOptions options;

    private CarcassFiles(CarcassOptions options, Terminal terminal) {
        this.options = options;
        this.terminal = terminal;
    }

    static CarcassFiles open(CarcassOptions options, String specification, Terminal terminal) {
        List<String> written = new ArrayList<>();
        if (options.isWritten() && !options.isWrittenOut()) {
            written.add(options.to());
        }
        if (options.keepsRefused()) {
            written.add(options.refused());
        }
        for (String file : written) {
            for (String read : List.of(options.from(), specification)) {
                if (WholeFile.isSame(FileArgument.path(file), FileArgument.path(read))) {
                    throw new WrongUsage("The file " + read + " would be written over; name another file.");
                }
            }
        }
        if (written.contains(CarcassOptions.STANDARD)) {
            throw new WrongUsage("Rows that are refused cannot be printed; name a file for them.");
        } else if (written.size() == 2
                && areOne(FileArgument.path(written.get(0)), FileArgument.path(written.get(1)))) {
            throw new WrongUsage("What carcasses give and the rows refused cannot go to one file.");
        }
        return new CarcassFiles(options, terminal);
    }

    private static boolean areOne(Path one, Path other) {
        return WholeFile.isSame(one, other)
                || one.toAbsolutePath()
                        .normalize()
                        .equals(other.toAbsolutePath().normalize());
    }

    BatchFiles files() throws IOException {
        BatchFiles files = in();
        if (options.isWrittenOut()) {
            files = files.writing(terminal.out());
        } else if (options.isWritten()) {
            files = files.writing(half(options.to()).out());
        }
        return options.keepsRefused() ? files.refusing(half(options.refused()).out()) : files;
    }

    private BatchFiles in() throws IOException {
        if (options.from().equals(CarcassOptions.STANDARD)) {
            return BatchFiles.reading("standard input", terminal.in());
        }
        Path path = FileArgument.path(options.from());
        if (!Files.exists(path)) {
            throw new IOException(options.from() + " is not there");
        } else if (!Files.isRegularFile(path)) {
            throw new IOException(options.from() + " is not a regular file");
        }
        InputStream in = Files.newInputStream(path);
        open.add(in);
        String name = String.valueOf(path.getFileName());
        if (!terminal.colour()) {
            return BatchFiles.reading(name, in);
        }
        ProgressLine progress = new ProgressLine(in, Files.size(path), terminal.err());
        shown.add(progress);
        return BatchFiles.reading(name, progress).telling(progress);
    }

    private HalfFile half(String file) throws IOException {
        try {
            HalfFile half = HalfFile.of(FileArgument.path(file));
            written.add(half);
            return half;
        } catch (FileAlreadyExistsException underWay) {
            throw new IOException(
                    file + " is being written by another run, or one was broken off and left " + underWay.getFile()
                            + ", which may then be deleted",
                    underWay);
        } catch (NoSuchFileException noFolder) {
            throw new IOException("the folder of " + file + " is not there", noFolder);
        }
    }

    /** Takes the line that says how far it is off the terminal. */
    void clear() {
        shown.forEach(ProgressLine::clear);
    }

    void finish() throws IOException {
        for (HalfFile half : written) {
            half.finish();
        }
    }

    @Override
    public void close() throws IOException {
        for (HalfFile half : written) {
            half.close();
        }
        for (InputStream each : open) {
            each.close();
        }
    }
}
