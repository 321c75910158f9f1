package dev.gambrel.conformance.corpus;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Specifications of any size. */
final class Sheets {
    private static final String HOGGET = """
            language 1
            use "catalogue:sheep"
            specification "Marram hogget" revision 3 for sheep
            carcass cold, 20 kg to 24 kg
            stream mince, saleable
            """;

    private Sheets() {}

    /** The usual first lines, and more. */
    static String hogget(String more) {
        return HOGGET + more;
    }

    static String using(String file) {
        return HOGGET.replace("use", "use \"" + file + "\"\nuse") + "rest -> mince\n";
    }

    /** So many cuts inside one another, each but the innermost with braces. */
    static String cutsInCuts(int depth) {
        String opened = IntStream.rangeClosed(1, depth)
                .mapToObj(i -> "cut c" + i + " 50 %" + (i < depth ? " {\n" : "\n"))
                .collect(Collectors.joining());
        return hogget(opened + "rest -> mince\n}\n".repeat(depth - 1) + "rest -> mince\n");
    }

    /** So many statements, those of the catalogue counted. */
    static String statements(int count) {
        String head = "language 1\nspecification \"Many\" revision 1 for goat\ncarcass cold\nspecies goat {\n}\n"
                + "stream mince, saleable\nrest -> mince\n";
        int already = 6;
        return head + "note \"again\"\n".repeat(count - already);
    }

    /** A species of one piece with so many bones. */
    static String bones(int count) {
        String bones =
                IntStream.range(0, count).mapToObj(i -> "bone b" + i + "\n").collect(Collectors.joining());
        return "language 1\nspecies goat {\npiece leg {\n" + bones + "}\n}\n"
                + "specification \"Many\" revision 1 for goat\ncarcass cold\nstream mince, saleable\nrest -> mince\n";
    }

    /** A specification that uses others, so many files together with it and the catalogue's. */
    static Path files(Path folder, int count) throws IOException {
        StringBuilder uses = new StringBuilder();
        for (int i = 0; i < count - 2; i++) {
            Files.writeString(folder.resolve("part" + i + ".cuts"), "language 1\n");
            uses.append("use \"part").append(i).append(".cuts\"\n");
        }
        return Files.writeString(folder.resolve("hogget.cuts"), hogget(uses + "rest -> mince\n"));
    }
}
