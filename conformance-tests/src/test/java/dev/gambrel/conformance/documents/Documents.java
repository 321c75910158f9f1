package dev.gambrel.conformance.documents;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The fenced blocks of a page. */
final class Documents {
    private static final Path ROOT = Path.of("..");
    private static final Pattern BLOCK = Pattern.compile("```([^\\n]*)\\n(.*?)```", Pattern.DOTALL);

    /**
     * A fenced block.
     *
     * @param kind what stands after the fence
     * @param text what it holds
     */
    record Block(String kind, String text) {
        @Override
        public String toString() {
            return text.lines().findFirst().orElse("");
        }
    }

    private Documents() {}

    static List<Block> blocks(String page) {
        List<Block> blocks = new ArrayList<>();
        Matcher matcher = BLOCK.matcher(text(page));
        while (matcher.find()) {
            blocks.add(new Block(matcher.group(1).strip(), matcher.group(2)));
        }
        return blocks;
    }

    static String text(String page) {
        try {
            return Files.readString(ROOT.resolve(page));
        } catch (IOException missing) {
            throw new UncheckedIOException(missing);
        }
    }
}
