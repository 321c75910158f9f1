package dev.gambrel.cli.format;

import dev.gambrel.cli.argument.FileArgument;
import dev.gambrel.cli.file.WholeFile;
import dev.gambrel.cli.terminal.ExitStatus;
import dev.gambrel.cli.terminal.FindingsPrinter;
import dev.gambrel.cli.terminal.Terminal;
import dev.gambrel.cli.verb.Verb;
import dev.gambrel.cli.verb.WrongUsage;
import dev.gambrel.compiler.format.SpecFormatter;
import dev.gambrel.compiler.source.FolderSources;
import dev.gambrel.compiler.source.Found;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.diagnostic.Visible;
import dev.gambrel.limits.Limits;
import dev.gambrel.text.SourceText;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.List;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;

/**
 * Lays specifications out: prints one, names those that are not laid out, or writes them back. A byte order mark is
 * taken off and lines end in a line feed; a file that is laid out already is not touched.
 */
public final class FormatVerb implements Verb {
    /** What it is called on the command line. */
    public static final String NAME = "format";

    private static final String STANDARD_INPUT = "-";
    private static final String ENDING = ".cuts";

    /** What is done with a text that was laid out. */
    private enum Use {
        PRINT,
        CHECK,
        WRITE
    }

    @Override
    public String name() {
        return NAME;
    }

    @Override
    public CommandSpec spec() {
        CommandSpec spec = CommandSpec.create();
        spec.usageMessage()
                .description(
                        "Lay a specification out and print it. No word, figure or comment changes, nor which of them"
                                + " stand on one line.");
        spec.addOption(OptionSpec.builder("--check")
                .description("Print the names of the files that are not laid out, and end with 1 if there are any.")
                .build());
        spec.addOption(OptionSpec.builder("--write")
                .description("Write the files back instead of printing, and print the names of those that changed.")
                .build());
        spec.addPositional(FileArgument.several("The specifications (.cuts); - reads what is handed to the program."));
        return spec;
    }

    @Override
    public ExitStatus run(ParseResult parsed, Terminal terminal) {
        List<String> files = FileArgument.files(parsed);
        Use use = use(parsed, files);
        ExitStatus status = ExitStatus.FINE;
        for (String file : files) {
            status = status.and(format(file, use, terminal));
        }
        return status;
    }

    private static Use use(ParseResult parsed, List<String> files) {
        boolean check = parsed.hasMatchedOption("--check");
        boolean write = parsed.hasMatchedOption("--write");
        if (check && write) {
            throw new WrongUsage("Files are either checked or written; choose --check or --write.");
        } else if (!check && !write && files.size() > 1) {
            throw new WrongUsage("One file is printed at a time; for several, choose --check or --write.");
        } else if (write && files.contains(STANDARD_INPUT)) {
            throw new WrongUsage("What is handed to the program cannot be written back; leave --write out.");
        }
        for (String file : files) {
            if (!file.equals(STANDARD_INPUT) && !file.endsWith(ENDING)) {
                throw new WrongUsage(
                        "“" + file + "” is not called like a specification; its name ends in " + ENDING + ".");
            }
        }
        if (check) {
            return Use.CHECK;
        }
        return write ? Use.WRITE : Use.PRINT;
    }

    private static ExitStatus format(String file, Use use, Terminal terminal) {
        Found found = read(file, terminal);
        if (found instanceof Found.Refused refused) {
            return tell(Result.failed(List.of(refused.finding(shown(file), Limits.DEFAULT))), terminal);
        }
        SourceText text = ((Found.Text) found).text();
        Result<String> result = new SpecFormatter().format(text);
        if (result.value().isEmpty()) {
            return tell(result, terminal);
        }
        String formatted = result.value().get();
        if (use == Use.PRINT) {
            terminal.out().print(formatted);
            return ExitStatus.FINE;
        }
        boolean done = text.text().equals(formatted) && !hasByteOrderMark(file, formatted);
        return done ? ExitStatus.FINE : change(file, formatted, use, terminal);
    }

    private static ExitStatus change(String file, String formatted, Use use, Terminal terminal) {
        if (use == Use.WRITE && !WholeFile.write(FileArgument.path(file), formatted)) {
            return WholeFile.couldNot(file, terminal);
        }
        terminal.out().println(Visible.text(shown(file)));
        return use == Use.WRITE ? ExitStatus.FINE : ExitStatus.FINDINGS;
    }

    private static Found read(String file, Terminal terminal) {
        return file.equals(STANDARD_INPUT)
                ? FolderSources.read(terminal.in(), shown(file), Limits.DEFAULT)
                : FolderSources.read(FileArgument.path(file), shown(file), Limits.DEFAULT);
    }

    /** The text that was read is without it, so that only the length of the file tells. */
    private static boolean hasByteOrderMark(String file, String formatted) {
        try {
            return !file.equals(STANDARD_INPUT)
                    && Files.size(FileArgument.path(file)) != formatted.getBytes(StandardCharsets.UTF_8).length;
        } catch (IOException gone) {
            return false;
        }
    }

    private static String shown(String file) {
        return file.equals(STANDARD_INPUT) ? "standard input" : file;
    }

    private static ExitStatus tell(Result<?> result, Terminal terminal) {
        FindingsPrinter.print(result.diagnostics(), terminal.err(), terminal.colour(), false);
        return ExitStatus.of(result.diagnostics());
    }
}
