package dev.gambrel.conformance.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.compiler.Compilation;
import dev.gambrel.compiler.SpecCompiler;
import dev.gambrel.compiler.source.FileCode;
import dev.gambrel.compiler.source.FolderSources;
import dev.gambrel.compiler.source.Found;
import dev.gambrel.compiler.source.Sources;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.json.TreeJsonWriter;
import dev.gambrel.limits.Limits;
import dev.gambrel.text.SourceText;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;

/** A revision says what the specification would say if it were written out with the change in it. */
class RevisionLaws {
    private static final String BASE = "revised.cuts";
    private static final Pattern NUMBER = Pattern.compile("revision (\\d+)");
    private static final Pattern SHARE = Pattern.compile("(\\d+(?:\\.\\d+)?)(?= ?%| ± \\d+(?:\\.\\d+)? ?%)");
    private static final BigDecimal STEP = new BigDecimal("0.01");

    @Provide
    Arbitrary<Path> files() {
        return Arbitraries.of(Specifications.valid().stream()
                .filter(file -> NUMBER.matcher(Specifications.text(file)).find())
                .filter(file -> !Specifications.text(file).contains("replaces "))
                .toList());
    }

    /** One statement with those that hold it, outermost first. */
    private record Chosen(List<Lines> chain) {
        Lines last() {
            return chain.get(chain.size() - 1);
        }

        /** The lines that hold it, and within them others in its place. */
        String around(String inner) {
            StringBuilder out = new StringBuilder();
            chain.subList(0, chain.size() - 1)
                    .forEach(holder -> out.append(name(holder)).append(" {\n"));
            return out + inner + "\n" + "}\n".repeat(chain.size() - 1);
        }

        private static String name(Lines holder) {
            Matcher name = Pattern.compile("\\s*cut (?:\"[^\"]*\"|[^\\d,{>\"-]+?)(?=\\s*[\\d,{>-])")
                    .matcher(String.join(" ", holder.head()));
            Assume.that(name.lookingAt());
            return name.group();
        }
    }

    private static List<Chosen> parts(List<Lines> statements, List<Lines> above) {
        List<Chosen> found = new ArrayList<>();
        for (Lines statement : statements) {
            String first = statement.head().get(0).strip();
            List<Lines> chain = new ArrayList<>(above);
            chain.add(statement);
            if (first.startsWith("cut ")) {
                found.add(new Chosen(chain));
                found.addAll(parts(statement.body(), chain));
            } else if (first.startsWith("bone ") || first.startsWith("remove ") || first.startsWith("loss ")) {
                found.add(new Chosen(chain));
            }
        }
        return found;
    }

    private static String revision(Path file, String changes) {
        return "language 1\nrevises \"" + BASE + "\"\n" + next(Specifications.text(file)) + "\n" + changes;
    }

    /** The specification line of a text with the number after its own. */
    private static String next(String text) {
        Lines line = Lines.of(text).stream()
                .filter(statement -> statement.head().get(0).startsWith("specification"))
                .findFirst()
                .orElseThrow();
        return numbered(String.join("\n", line.head()));
    }

    private static String numbered(String text) {
        Matcher number = NUMBER.matcher(text);
        assertTrue(number.find());
        return number.replaceFirst("revision " + (Integer.parseInt(number.group(1)) + 1));
    }

    private static Result<Compilation> compile(Path file, String revision) {
        try {
            Sources folder = FolderSources.of(file.getParent(), Limits.DEFAULT);
            Sources sources = (name, user) -> name.equals(BASE)
                    ? new Found.Text(new SourceText(BASE, Specifications.text(file)))
                    : user.isEmpty() ? new Found.Refused(FileCode.MISSING, 0) : folder.find(name, user);
            return new SpecCompiler().compile(new SourceText("revision.cuts", revision), sources);
        } catch (IOException noFolder) {
            throw new UncheckedIOException(noFolder);
        }
    }

    private static String told(Result<Compilation> result) {
        return result.value()
                .map(compilation -> TreeJsonWriter.write(compilation.tree()))
                .orElseGet(() -> result.diagnostics().stream()
                        .map(Diagnostic::message)
                        .sorted()
                        .toList()
                        .toString());
    }

    private static void sameWrittenOut(Path file, String revision, String writtenOut) {
        assertEquals(told(Specifications.compile(file, writtenOut)), told(compile(file, revision)));
    }

    @Property(tries = 100)
    void a_revision_that_names_nothing_changes_nothing_but_the_number(@ForAll("files") Path file) {
        sameWrittenOut(file, revision(file, ""), numbered(Specifications.text(file)));
    }

    @Property(tries = 300)
    void a_line_said_again_changes_nothing(@ForAll("files") Path file, @ForAll @IntRange(max = 999) int which) {
        Chosen chosen = chosen(file, which);
        String head = String.join("\n", chosen.last().head());
        String line = chosen.last().hasBraces() ? head + "\n}" : head;
        sameWrittenOut(file, revision(file, chosen.around(line)), numbered(Specifications.text(file)));
    }

    @Property(tries = 500)
    void a_share_changed_at_the_cost_of_the_rest_is_that_share_written_out(
            @ForAll("files") Path file, @ForAll @IntRange(max = 999) int which) {
        Chosen chosen = chosen(file, which);
        String head = String.join("\n", chosen.last().head());
        Matcher share = SHARE.matcher(head);
        Assume.that(share.find() && !head.contains(" to "));
        String changed = head.substring(0, share.start())
                + new BigDecimal(share.group(1)).add(STEP)
                + head.substring(share.end());
        boolean braces = chosen.last().hasBraces();
        String bare = braces ? changed.substring(0, changed.lastIndexOf('{')).stripTrailing() : changed;
        Assume.that(hasRest(file, chosen));
        String line = bare + ", difference from rest";
        String text = Specifications.text(file);
        int at = text.indexOf(head);
        Assume.that(at >= 0 && text.indexOf(head, at + 1) < 0);
        sameWrittenOut(
                file,
                revision(file, chosen.around(line)),
                numbered(text.substring(0, at) + changed + text.substring(at + head.length())));
    }

    private static boolean hasRest(Path file, Chosen chosen) {
        List<Lines> around = chosen.chain().size() > 1
                ? chosen.chain().get(chosen.chain().size() - 2).body()
                : Lines.of(Specifications.text(file));
        return around.stream().anyMatch(line -> line.head().get(0).strip().startsWith("rest"));
    }

    private static Chosen chosen(Path file, int which) {
        List<Chosen> parts = parts(Lines.of(Specifications.text(file)), List.of());
        Assume.that(!parts.isEmpty());
        return parts.get(which % parts.size());
    }
}
