package dev.gambrel.compiler.source;

import dev.gambrel.limits.Limits;
import dev.gambrel.text.SourceText;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * The files of one folder and the folders in it, and no others: symbolic links are followed first and judged by where
 * they lead. Only regular files whose name ends in {@code .cuts} are opened. Thread-safe.
 */
public final class FolderSources implements Sources {
    /** Names that stand for a device in any folder of Windows, whatever their ending. */
    private static final Set<String> DEVICES = Set.of("con", "prn", "aux", "nul", "conin$", "conout$");

    private static final Pattern PORT = Pattern.compile("(com|lpt)[0-9¹²³]");

    private final Path folder;
    private final Limits limits;

    private FolderSources(Path folder, Limits limits) {
        this.folder = folder;
        this.limits = limits;
    }

    /**
     * The files of a folder.
     *
     * @param folder an existing folder
     * @param limits how large a file may be
     * @return its files
     * @throws IOException if there is no such folder
     */
    public static FolderSources of(Path folder, Limits limits) throws IOException {
        return new FolderSources(folder.toRealPath(), limits);
    }

    /**
     * Finds a file.
     *
     * @param name a path with forward slashes, relative to the file that uses it
     * @param user the path of that file, relative to the folder
     * @return the text, named by its path relative to the folder
     */
    @Override
    public Found find(String name, String user) {
        if (isUnsafe(name)) {
            return new Found.Refused(FileCode.OUTSIDE, 0);
        }
        try {
            Path from = folder.resolve(user).getParent();
            Path wanted = (from == null ? folder : from).resolve(name).normalize();
            if (!wanted.startsWith(folder)) {
                return new Found.Refused(FileCode.OUTSIDE, 0);
            }
            Path real = wanted.toRealPath();
            return real.startsWith(folder) ? read(real) : new Found.Refused(FileCode.OUTSIDE, 0);
        } catch (NoSuchFileException | InvalidPathException none) {
            return new Found.Refused(FileCode.MISSING, 0);
        } catch (IOException unreadable) {
            return new Found.Refused(FileCode.CANNOT_READ, 0);
        }
    }

    /** What one system or another would take for something else than the folders and the file that are named. */
    private static boolean isUnsafe(String name) {
        boolean isElsewhere = name.startsWith("/") || name.indexOf('\\') >= 0 || name.indexOf(':') >= 0;
        return isElsewhere || Arrays.stream(name.split("/", -1)).anyMatch(FolderSources::isNoPlainName);
    }

    private static boolean isNoPlainName(String step) {
        if (step.equals(".") || step.equals("..")) {
            return false;
        }
        int dot = step.indexOf('.');
        String stem = (dot < 0 ? step : step.substring(0, dot)).stripTrailing().toLowerCase(Locale.ROOT);
        return step.endsWith(".")
                || step.endsWith(" ")
                || DEVICES.contains(stem)
                || PORT.matcher(stem).matches();
    }

    private Found read(Path file) throws IOException {
        boolean isSpecification = file.getFileName().toString().endsWith(".cuts") && Files.isRegularFile(file);
        if (!isSpecification) {
            return new Found.Refused(FileCode.MISSING, 0);
        }
        return read(file, folder.relativize(file).toString().replace('\\', '/'), limits);
    }

    /**
     * Reads one file, wherever it lies.
     *
     * @param file the file
     * @param name what messages shall call it
     * @param limits how large it may be
     * @return the text without a byte order mark, or why it is refused
     */
    public static Found read(Path file, String name, Limits limits) {
        if (Files.exists(file) && !Files.isRegularFile(file)) {
            return new Found.Refused(FileCode.CANNOT_READ, 0);
        }
        try {
            long bytes = Files.exists(file) ? Files.size(file) : 0;
            if (bytes > limits.textBytes()) {
                return new Found.Refused(FileCode.TOO_LARGE, bytes);
            }
            try (InputStream in = Files.newInputStream(file)) {
                return read(in, name, limits);
            }
        } catch (NoSuchFileException none) {
            return new Found.Refused(FileCode.MISSING, 0);
        } catch (IOException unreadable) {
            return new Found.Refused(FileCode.CANNOT_READ, 0);
        }
    }

    /**
     * Reads what a program hands over, to its end or to one byte more than is taken.
     *
     * @param in where the bytes come from; it is not closed
     * @param name what messages shall call it
     * @param limits how large it may be
     * @return the text without a byte order mark, or why it is refused; of what is too large so many bytes as were read
     */
    public static Found read(InputStream in, String name, Limits limits) {
        try {
            byte[] bytes = in.readNBytes((int) Math.min(Integer.MAX_VALUE, limits.textBytes() + 1L));
            return bytes.length > limits.textBytes()
                    ? new Found.Refused(FileCode.TOO_LARGE, bytes.length)
                    : new Found.Text(new SourceText(name, decode(bytes)));
        } catch (CharacterCodingException notText) {
            return new Found.Refused(FileCode.NOT_TEXT, 0);
        } catch (IOException unreadable) {
            return new Found.Refused(FileCode.CANNOT_READ, 0);
        }
    }

    private static String decode(byte[] bytes) throws CharacterCodingException {
        String text = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT)
                .decode(ByteBuffer.wrap(bytes))
                .toString();
        return withoutByteOrderMark(text);
    }

    /**
     * A text without the mark that some programs put before its first character.
     *
     * @param text a text as it stands in a file
     * @return the text as it is read
     */
    public static String withoutByteOrderMark(String text) {
        return text.startsWith("\uFEFF") ? text.substring(1) : text;
    }
}
