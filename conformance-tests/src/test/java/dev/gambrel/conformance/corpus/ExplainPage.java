package dev.gambrel.conformance.corpus;

import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.cli.explain.Codes;
import dev.gambrel.diagnostic.Code;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The page about one kind of finding, in its parts. */
record ExplainPage(String text) {
    static ExplainPage of(Code code) {
        try (InputStream in = Codes.class.getResourceAsStream(code.id() + ".md")) {
            assertNotNull(in, code.id() + " has no page");
            return new ExplainPage(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    String title() {
        return text.lines().findFirst().orElse("");
    }

    String meaning() {
        return text.substring(title().length(), text.indexOf("\n## "));
    }

    String why() {
        return text.substring(text.indexOf("\n## Why\n") + "\n## Why\n".length());
    }

    /** The file "hogget.cuts" that an example revises or uses; empty where the page shows none. */
    String other() {
        return text.contains("\n## What is revised\n") ? example("What is revised") : "";
    }

    String kindOfExample(String heading) {
        return block(heading).group(1);
    }

    String example(String heading) {
        return block(heading).group(2);
    }

    private Matcher block(String heading) {
        Matcher block = Pattern.compile("\n## " + heading + "\n\n```(\\w+)\n(.*?)```\n", Pattern.DOTALL)
                .matcher(text);
        assertTrue(block.find(), "a block under " + heading);
        return block;
    }
}
