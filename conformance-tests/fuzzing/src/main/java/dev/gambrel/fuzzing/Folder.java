package dev.gambrel.fuzzing;

import dev.gambrel.compiler.source.FileCode;
import dev.gambrel.compiler.source.Found;
import dev.gambrel.compiler.source.Sources;
import dev.gambrel.text.SourceText;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Several files in one text, divided by lines of three equals signs: the first is the specification, the others are found as {@code 1.cuts},
 * {@code 2.cuts} and so on.
 */
record Folder(List<SourceText> files) implements Sources {
    private static final String BETWEEN = "===\n";

    static Folder of(String text) {
        String[] parts = text.split(BETWEEN, -1);
        List<SourceText> files = new ArrayList<>();
        Arrays.stream(parts).forEach(part -> files.add(new SourceText(files.size() + ".cuts", part)));
        return new Folder(List.copyOf(files));
    }

    SourceText first() {
        return files.get(0);
    }

    @Override
    public Found find(String name, String user) {
        return files.stream()
                .filter(file -> file.name().equals(name))
                .findFirst()
                .<Found>map(Found.Text::new)
                .orElse(new Found.Refused(FileCode.MISSING, 0));
    }
}
