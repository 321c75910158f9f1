package dev.gambrel.cli.shares;

import dev.gambrel.cli.argument.FileArgument;
import dev.gambrel.cli.file.HalfFile;
import dev.gambrel.cli.file.WholeFile;
import dev.gambrel.cli.terminal.ExitStatus;
import dev.gambrel.cli.terminal.Terminal;
import dev.gambrel.cli.verb.WrongUsage;
import dev.gambrel.compiler.restate.RestatedText;
import dev.gambrel.compiler.source.FolderSources;
import dev.gambrel.compiler.source.Found;
import dev.gambrel.diagnostic.Visible;
import dev.gambrel.limits.Limits;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;

/**
 * What is written of proposed lines, and only if it is asked for: a patch, or the specification itself.
 *
 * @param patch the name of the patch; empty if none is asked for
 * @param isApplied whether the specification is to be written
 */
record PatchFiles(String patch, boolean isApplied) {
    private static final String PATCH = "--patch";
    private static final String APPLY = "--apply";
    private static final String BYTE_ORDER_MARK = "\uFEFF";

    static List<OptionSpec> options() {
        return List.of(
                OptionSpec.builder(PATCH)
                        .paramLabel("FILE")
                        .type(String.class)
                        .description("Write the proposed lines to this file as a patch, instead of printing them.")
                        .build(),
                OptionSpec.builder(APPLY)
                        .description("Write the proposed lines into the specification. Nothing is written unasked.")
                        .build());
    }

    static PatchFiles of(ParseResult parsed, String spec, List<String> sheets) {
        PatchFiles files = new PatchFiles(parsed.matchedOptionValue(PATCH, ""), parsed.hasMatchedOption(APPLY));
        boolean isAsked = files.isApplied || !files.patch.isEmpty();
        if (isAsked && spec.endsWith(".json")) {
            throw new WrongUsage("A tree in JSON has no lines to propose; name the specification (.cuts).");
        }
        if (!files.patch.isEmpty()) {
            List<String> read = new ArrayList<>(sheets);
            read.add(spec);
            Path target = FileArgument.path(files.patch);
            if (files.patch.endsWith(".cuts")
                    || read.stream().anyMatch(file -> WholeFile.isSame(FileArgument.path(file), target))) {
                throw new WrongUsage("The patch would be written over " + files.patch + "; name another file.");
            }
        }
        return files;
    }

    boolean isPrinted() {
        return patch.isEmpty();
    }

    /** With an error among the findings the figures are not those that were asked for. */
    void refuse(Terminal terminal) {
        if (isApplied || !patch.isEmpty()) {
            terminal.err().println("Nothing was written, because of the errors above.");
        }
    }

    ExitStatus write(String spec, List<RestatedText> texts, Terminal terminal) {
        if (texts.isEmpty()) {
            return ExitStatus.FINE;
        }
        if (!patch.isEmpty()) {
            String diff = texts.stream().map(RestatedText::diff).collect(Collectors.joining());
            if (!WholeFile.write(FileArgument.path(patch), diff)) {
                return WholeFile.couldNot(patch, terminal);
            }
            terminal.err().println("The proposed lines were written to " + Visible.text(patch) + ".");
        }
        return isApplied ? apply(spec, texts, terminal) : ExitStatus.FINE;
    }

    /** All files are written beside their places before the first takes its place, so that none is changed where one cannot be. */
    private static ExitStatus apply(String spec, List<RestatedText> texts, Terminal terminal) {
        Path folder = FileArgument.path(spec).toAbsolutePath().getParent();
        List<RestatedText> mainFirst = new ArrayList<>(texts);
        Collections.reverse(mainFirst);
        mainFirst.sort((one, other) -> Boolean.compare(isMain(other, spec), isMain(one, spec)));
        List<HalfFile> halves = new ArrayList<>();
        try {
            for (RestatedText text : mainFirst) {
                Path file = folder.resolve(text.before().name());
                Optional<String> mark = markIfUnchanged(file, text);
                if (mark.isEmpty()) {
                    return WholeFile.couldNot(text.before().name(), terminal);
                }
                halves.add(HalfFile.of(file));
                byte[] bytes = (mark.get() + text.after().text()).getBytes(StandardCharsets.UTF_8);
                halves.get(halves.size() - 1).out().write(bytes);
            }
            for (HalfFile half : halves) {
                half.finish();
            }
        } catch (IOException cannotWrite) {
            return WholeFile.couldNot(
                    mainFirst
                            .get(Math.min(halves.size(), mainFirst.size() - 1))
                            .before()
                            .name(),
                    terminal);
        } finally {
            halves.forEach(PatchFiles::leave);
        }
        mainFirst.forEach(text -> terminal.err()
                .println("The proposed lines were written into "
                        + Visible.text(text.before().name()) + "."));
        return ExitStatus.FINE;
    }

    /** Whatever was not finished goes. */
    private static void leave(HalfFile half) {
        try {
            half.close();
        } catch (IOException gone) {
            return;
        }
    }

    private static boolean isMain(RestatedText text, String spec) {
        return text.before()
                .name()
                .equals(String.valueOf(FileArgument.path(spec).getFileName()));
    }

    /** The byte order mark that the file begins with, or none; nothing if it is no longer what was read. */
    private static Optional<String> markIfUnchanged(Path file, RestatedText text) {
        Found found = FolderSources.read(file, text.before().name(), Limits.DEFAULT);
        if (!(found instanceof Found.Text again && again.text().equals(text.before()))) {
            return Optional.empty();
        }
        try (InputStream in = Files.newInputStream(file)) {
            boolean isMarked = new String(in.readNBytes(3), StandardCharsets.UTF_8).equals(BYTE_ORDER_MARK);
            return Optional.of(isMarked ? BYTE_ORDER_MARK : "");
        } catch (IOException gone) {
            return Optional.empty();
        }
    }
}
