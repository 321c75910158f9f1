package dev.gambrel.conformance.laws;

import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.management.ThreadMXBean;
import dev.gambrel.compiler.SpecCompiler;
import dev.gambrel.compiler.format.SpecFormatter;
import dev.gambrel.compiler.source.FileCode;
import dev.gambrel.compiler.source.Found;
import dev.gambrel.compiler.source.Sources;
import dev.gambrel.json.TreeJsonReader;
import dev.gambrel.json.TreeJsonWriter;
import dev.gambrel.limits.Limits;
import dev.gambrel.text.SourceText;
import java.lang.management.ManagementFactory;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import net.jqwik.api.Example;

/**
 * Twice the text takes twice the memory, counted in bytes that the thread asks for and never in seconds: whatever is looked
 * at again for each line, or told again in each finding, shows there.
 */
class LinearMemoryLaws {
    /** More than there are names that a slip is held against. */
    private static final int LINES = 300;

    /** Twice, and what tables grow by at a time. */
    private static final double MOST = 2.3;

    private static final ThreadMXBean THREADS = (ThreadMXBean) ManagementFactory.getThreadMXBean();

    private static final String SPECIFICATION = """
            specification "Marram hogget" revision 3 for sheep
            carcass cold, 20 kg to 24 kg
            stream mince, saleable
            stream bones, by-product
            """;

    private static final String SPECIES = """
            language 1
            source guide, published "Guide"
            species sheep {
            piece leg, two per carcass
            }
            """;

    private static final String HEAD = SPECIES + SPECIFICATION;

    private static final String REVISES = """
            language 1
            revises "old.cuts"
            specification "Marram hogget" revision 4 for sheep
            """;

    private static final String REST = "rest -> mince\n";

    private static String lines(int count, IntFunction<String> line) {
        return IntStream.range(0, count).mapToObj(line).collect(Collectors.joining());
    }

    private static String species(String pieces) {
        return "language 1\nsource guide, published \"Guide\"\nspecies sheep {\n" + pieces + "}\n" + SPECIFICATION;
    }

    /** A name of letters alone, since figures after a name are its share. */
    private static String n(int i) {
        return "n"
                + Integer.toString(i, 26)
                        .chars()
                        .mapToObj(c -> String.valueOf((char) (c < 'a' ? c + 49 : c + 10)))
                        .collect(Collectors.joining());
    }

    private static String cut(int i) {
        return "cut " + n(i) + " 0.001 % ± 0.0001 % -> mince\n";
    }

    /** A leg in a cut of its own. */
    private static String leg(int i) {
        return "cut " + n(i) + " 0.001 % {\ncut leg 10 %, boneless, also haunch -> mince\nrest -> mince\n}\n";
    }

    private static void growsInStep(String what, IntFunction<String> text, Consumer<String> work) {
        work.accept(text.apply(LINES));
        long before = bytes(text.apply(LINES), work);
        for (int times : new int[] {2, 4}) {
            long now = bytes(text.apply(times * LINES), work);
            double ratio = (double) now / before;
            assertTrue(
                    ratio <= MOST,
                    () -> what + ": " + times + " times the lines take " + ratio + " times what half took");
            before = now;
        }
    }

    private static long bytes(String text, Consumer<String> work) {
        long before = THREADS.getCurrentThreadAllocatedBytes();
        work.accept(text);
        return THREADS.getCurrentThreadAllocatedBytes() - before;
    }

    private static void compile(String text) {
        new SpecCompiler().compile(new SourceText("hogget.cuts", text), Sources.none());
    }

    private static void revise(String both) {
        String[] files = both.split("===\n");
        Sources old = (name, user) -> name.equals("old.cuts")
                ? new Found.Text(new SourceText(name, files[1]))
                : new Found.Refused(FileCode.MISSING, 0);
        new SpecCompiler().compile(new SourceText("new.cuts", files[0]), old);
    }

    private static void layOut(String text) {
        new SpecFormatter().format(new SourceText("hogget.cuts", text));
    }

    @Example
    void specifications_of_many_lines() {
        Map<String, IntFunction<String>> texts = new LinkedHashMap<>();
        texts.put("cuts", k -> HEAD + lines(k, LinearMemoryLaws::cut) + REST);
        texts.put("streams", k -> HEAD + lines(k, i -> "stream " + n(i) + ", saleable\n") + REST);
        texts.put("notes", k -> HEAD + lines(k, i -> "note \"again\"\n") + REST);
        texts.put("losses", k -> HEAD + lines(k, i -> "loss " + n(i) + " 0.001 %\n") + REST);
        texts.put("other names", k -> HEAD + "cut leg 30 %" + lines(k, i -> ", also " + n(i)) + " -> mince\n" + REST);
        texts.put(
                "portions",
                k -> HEAD + "cut leg 30 % -> mince {\n" + lines(k, i -> "portion " + n(i) + " 180 g\n") + "}\n" + REST);
        texts.put(
                "ways",
                k -> HEAD + "cut leg 30 % {\n"
                        + lines(
                                k,
                                i -> "worked as " + n(i) + ", when a piece is " + i + " g to " + (i + 1)
                                        + " g -> mince\n")
                        + "}\n" + REST);
        texts.put(
                "equations",
                k -> HEAD + "measure depth, in mm, 1 mm to 40 mm\n"
                        + lines(k, i -> "estimate " + n(i) + " = 38 % - 0.4 % per mm × depth\n") + REST);
        texts.forEach((what, text) -> growsInStep(what, text, LinearMemoryLaws::compile));
    }

    @Example
    void specifications_of_many_faults() {
        Map<String, IntFunction<String>> texts = new LinkedHashMap<>();
        texts.put("broken lines", k -> HEAD + lines(k, i -> "cut " + n(i) + " 0.01 % (\n"));
        texts.put("unknown lines", k -> HEAD + lines(k, i -> "cutt " + n(i) + "\n"));
        texts.put("braces", k -> HEAD + "{\n}\n".repeat(k));
        texts.put("strays", k -> HEAD + ";\n".repeat(k));
        texts.put(
                "slips of streams",
                k -> HEAD
                        + lines(k, i -> "stream tub of lean trim " + n(i) + ", saleable\n")
                        + lines(k, i -> "cut " + n(i) + " 0.001 % -> tub of lean trjm " + n(i) + "\n")
                        + REST);
        texts.put("one name", k -> HEAD + lines(k, i -> "cut leg 0.001 % -> mince\n") + REST);
        texts.put("files that are not there", k -> HEAD + lines(k, i -> "use \"f" + i + ".cuts\"\n") + REST);
        texts.put(
                "allowances",
                k -> HEAD
                        + lines(k, i -> "cut " + n(i) + " 0.001 % -> mince {\nallow outside-published \"so\"\n}\n")
                        + REST);
        texts.forEach((what, text) -> growsInStep(what, text, LinearMemoryLaws::compile));
    }

    /** Each cut is of a piece of which as much is told as there are cuts. */
    @Example
    void many_cuts_of_much_that_is_known() {
        Map<String, IntFunction<String>> texts = new LinkedHashMap<>();
        texts.put(
                "figures in print",
                k -> species("piece leg {\n"
                                + lines(k, i -> "published " + (20 + i % 50) + " % of carcass, source guide\n") + "}\n")
                        + lines(k, LinearMemoryLaws::leg)
                        + REST);
        texts.put(
                "pieces of one name",
                k -> species(lines(k, i -> "piece " + n(i) + ", also leg, also haunch\n"))
                        + lines(k, LinearMemoryLaws::leg)
                        + REST);
        texts.put(
                "values of a grade",
                k -> HEAD + "grade fat" + lines(k, i -> ", " + n(i)) + "\n"
                        + lines(
                                k,
                                i -> "cut " + n(i) + " 0.001 % {\nworked as a, when fat is na -> mince\n"
                                        + "worked as b, when fat is nb -> mince\n}\n")
                        + REST);
        texts.put(
                "contents",
                k -> species("piece leg {\n" + lines(k, i -> "bone " + n(i) + "\n") + "}\n")
                        + lines(k, i -> "cut x" + n(i) + " 0.001 %, boneless -> mince {\ncontains " + n(i) + "\n}\n")
                        + REST);
        texts.forEach((what, text) -> growsInStep(what, text, LinearMemoryLaws::compile));
    }

    @Example
    void revisions_of_many_lines() {
        Map<String, IntFunction<String>> texts = new LinkedHashMap<>();
        texts.put(
                "shares",
                k -> REVISES
                        + lines(k, i -> "cut " + n(i) + " 0.002 %, difference from the rest\n") + "===\n" + HEAD
                        + lines(k, LinearMemoryLaws::cut) + REST);
        texts.put(
                "left out",
                k -> REVISES + lines(k, i -> "omit " + n(i) + "\n") + "===\n" + HEAD + lines(k, LinearMemoryLaws::cut)
                        + REST);
        texts.put(
                "not there",
                k -> REVISES + lines(k, i -> "cut z" + n(i) + " 0.002 %\n") + "===\n" + HEAD
                        + lines(k, LinearMemoryLaws::cut) + REST);
        texts.put(
                "notes",
                k -> REVISES + "note \"new\"\n".repeat(k) + "===\n" + HEAD + "note \"old\"\n".repeat(k) + REST);
        texts.put(
                "notes left out",
                k -> REVISES + "omit note\n".repeat(k) + "===\n" + HEAD + "note \"old\"\n".repeat(k) + REST);
        texts.forEach((what, text) -> growsInStep(what, text, LinearMemoryLaws::revise));
    }

    @Example
    void texts_that_are_laid_out() {
        growsInStep("cuts", k -> HEAD + lines(k, LinearMemoryLaws::cut) + REST, LinearMemoryLaws::layOut);
        growsInStep("comments", k -> HEAD + "// so\n".repeat(k) + REST, LinearMemoryLaws::layOut);
        growsInStep("one line", k -> HEAD + "cut " + "x ".repeat(k) + "\n", LinearMemoryLaws::layOut);
        growsInStep("braces", k -> HEAD + "{}".repeat(k) + "\n", LinearMemoryLaws::layOut);
    }

    @Example
    void trees_that_are_sent() {
        IntFunction<String> cuts = k -> json(HEAD + lines(k, LinearMemoryLaws::cut) + REST);
        growsInStep("read", cuts, LinearMemoryLaws::read);
        growsInStep("written", k -> HEAD + lines(k, LinearMemoryLaws::cut) + REST, LinearMemoryLaws::json);
        growsInStep("spoilt", k -> cuts.apply(k).replace("\"share\"", "\"shore\""), LinearMemoryLaws::read);
        growsInStep("fields twice", k -> "{" + "\"format\": 1, ".repeat(k) + "\"x\": 1}", LinearMemoryLaws::read);
        growsInStep("values", k -> "[" + "1e9999, ".repeat(k) + "1]", LinearMemoryLaws::read);
    }

    private static String json(String text) {
        return TreeJsonWriter.write(new SpecCompiler()
                .compile(new SourceText("hogget.cuts", text), Sources.none())
                .orElseThrow()
                .tree());
    }

    private static void read(String json) {
        TreeJsonReader.read(new SourceText("hogget.json", json), Limits.DEFAULT);
    }
}
