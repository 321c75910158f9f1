package dev.gambrel.cli.file;

import dev.gambrel.cli.argument.FileArgument;
import dev.gambrel.cli.terminal.ExitStatus;
import dev.gambrel.cli.terminal.Terminal;
import dev.gambrel.cli.verb.WrongUsage;
import dev.gambrel.diagnostic.Visible;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;

/**
 * A page or a picture that is written beside what is printed, where it is asked for.
 *
 * @param kind what it is
 * @param name as written on the command line
 */
public record AskedFile(Kind kind, String name) {
    /** What is written. */
    public enum Kind {
        /** HTML. */
        PAGE("page", ".html", ".htm"),
        /** A drawing or an image. */
        PICTURE("picture", ".svg", ".png");

        private final String word;
        private final List<String> endings;

        Kind(String word, String... endings) {
            this.word = word;
            this.endings = List.of(endings);
        }

        private String rule() {
            return this == PAGE ? "let it end in .html" : "let it end in .svg or .png";
        }
    }

    /**
     * The option that asks for it.
     *
     * @param option its name
     * @param description what it does
     * @return the option
     */
    public static OptionSpec option(String option, String description) {
        return OptionSpec.builder(option)
                .paramLabel("FILE")
                .type(String.class)
                .description(description)
                .build();
    }

    /**
     * The file that is asked for. It is never written over what was read.
     *
     * @param kind what it is
     * @param option the name of the option
     * @param parsed the command line
     * @param read the files that are read
     * @return nothing where it is not asked for
     * @throws WrongUsage if its name ends otherwise, or is that of a file that is read
     */
    public static Optional<AskedFile> of(Kind kind, String option, ParseResult parsed, List<String> read) {
        if (!parsed.hasMatchedOption(option)) {
            return Optional.empty();
        }
        AskedFile file = new AskedFile(kind, parsed.matchedOptionValue(option, ""));
        if (kind.endings.stream().noneMatch(file::endsWith)) {
            throw new WrongUsage("“" + file.name + "” is not the name of a " + kind.word + "; " + kind.rule() + ".");
        }
        Path path = FileArgument.path(file.name);
        if (read.stream().anyMatch(each -> WholeFile.isSame(FileArgument.path(each), path))) {
            throw new WrongUsage("The " + kind.word + " would be written over a file that is read; name another file.");
        }
        return Optional.of(file);
    }

    /**
     * How its name ends.
     *
     * @param ending in small letters, such as ".png"
     * @return true if it ends so, in whatever case
     */
    public boolean endsWith(String ending) {
        return name.toLowerCase(Locale.ROOT).endsWith(ending);
    }

    /**
     * Writes it whole or not at all, and says so.
     *
     * @param bytes what shall stand in it
     * @param what it is, for example "The page to be signed"
     * @param terminal where it is said
     * @return how the program ends as far as this goes
     */
    public ExitStatus write(byte[] bytes, String what, Terminal terminal) {
        if (!WholeFile.write(FileArgument.path(name), bytes)) {
            return WholeFile.couldNot(name, terminal);
        }
        terminal.err().println(what + " was written to " + Visible.text(name) + ".");
        return ExitStatus.FINE;
    }
}
