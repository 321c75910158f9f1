package dev.gambrel.batches.csv;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.PushbackInputStream;
import java.io.Reader;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;

/** The characters of a file: UTF-8, or UTF-16 where a byte order mark says so. Bytes that are no character come out as U+FFFD. */
public final class Encoding {
    private static final int LONGEST_MARK = 3;

    private Encoding() {}

    /** The characters of a file, its byte order mark left out. */
    public static Reader reader(InputStream in) throws IOException {
        PushbackInputStream bytes = new PushbackInputStream(in, LONGEST_MARK);
        byte[] first = bytes.readNBytes(LONGEST_MARK);
        Charset charset = StandardCharsets.UTF_8;
        int mark = 0;
        if (begins(first, 0xEF, 0xBB, 0xBF)) {
            mark = 3;
        } else if (begins(first, 0xFF, 0xFE)) {
            charset = StandardCharsets.UTF_16LE;
            mark = 2;
        } else if (begins(first, 0xFE, 0xFF)) {
            charset = StandardCharsets.UTF_16BE;
            mark = 2;
        }
        bytes.unread(first, mark, first.length - mark);
        return new InputStreamReader(bytes, charset);
    }

    private static boolean begins(byte[] bytes, int... mark) {
        if (bytes.length < mark.length) {
            return false;
        }
        for (int i = 0; i < mark.length; i++) {
            if ((bytes[i] & 0xFF) != mark[i]) {
                return false;
            }
        }
        return true;
    }
}
