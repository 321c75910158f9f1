package dev.gambrel.json.located;

import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.limits.Limits;
import dev.gambrel.text.SourceText;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;

/** From bytes to text, and no longer than is allowed. */
public final class Utf8 {
    private static final char BYTE_ORDER_MARK = '\ufeff';

    private Utf8() {}

    /**
     * Decodes a file.
     *
     * @param name the file's name for people
     * @param bytes the whole file, with or without a byte order mark
     * @param limits how long it may be
     * @return its text, without the mark
     * @throws Refused if it is too long, or not UTF-8
     */
    public static SourceText decode(String name, byte[] bytes, Limits limits) throws Refused {
        checkLength(name, bytes.length, limits);
        ByteBuffer in = ByteBuffer.wrap(bytes);
        CharBuffer out = CharBuffer.allocate(bytes.length);
        CoderResult end = StandardCharsets.UTF_8.newDecoder().decode(in, out, true);
        if (end.isError()) {
            throw new Refused(Diagnostic.of(JsonCode.NOT_UTF8, new Place.InFile(name))
                    .with("offset", in.position() + 1)
                    .help("Save the file as UTF-8 and send it again."));
        }
        String text = out.flip().toString();
        boolean marked = !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK;
        return new SourceText(name, marked ? text.substring(1) : text);
    }

    static void checkLength(SourceText text, Limits limits) throws Refused {
        int characters = text.text().length();
        checkLength(text.name(), characters, limits);
        checkLength(text.name(), text.text().getBytes(StandardCharsets.UTF_8).length, limits);
    }

    private static void checkLength(String name, int bytes, Limits limits) throws Refused {
        if (bytes > limits.textBytes()) {
            throw new Refused(Diagnostic.of(JsonCode.FILE_TOO_LONG, new Place.InFile(name))
                    .with("found", bytes)
                    .with("allowed", limits.textBytes())
                    .help("Split it, or ask whoever runs this program to allow longer files."));
        }
    }
}
