package dev.gambrel.cli;

import dev.gambrel.cli.terminal.ExitStatus;
import dev.gambrel.cli.terminal.Terminal;
import dev.gambrel.cli.verb.Verb;
import dev.gambrel.cli.verb.WrongUsage;
import dev.gambrel.diagnostic.Visible;
import java.io.BufferedInputStream;
import java.io.Console;
import java.io.FileDescriptor;
import java.io.FileInputStream;
import java.io.FileOutputStream;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;

/** The program. Only the verb that is asked for is made ready, so that it starts quickly. */
public final class Gambrel {
    static final String NAME = "gambrel";
    static final String VERSION = "0.1.0";

    private Gambrel() {}

    /**
     * Runs the program and ends with its exit status.
     *
     * @param args a verb and what it takes
     */
    public static void main(String[] args) {
        Console console = System.console();
        Charset charset = console == null ? StandardCharsets.UTF_8 : console.charset();
        boolean colour = console != null && System.getenv("NO_COLOR") == null;
        PrintStream out = stream(FileDescriptor.out, charset);
        PrintStream err = stream(FileDescriptor.err, charset);
        InputStream in = new BufferedInputStream(new FileInputStream(FileDescriptor.in));
        ExitStatus status = run(List.of(args), new Terminal(out, err, colour, in));
        err.flush();
        if (out.checkError()) {
            err.println("What was to be printed could not be written.");
            err.flush();
            status = ExitStatus.COULD_NOT;
        }
        if (status != ExitStatus.FINE) {
            System.exit(status.number());
        }
    }

    private static PrintStream stream(FileDescriptor descriptor, Charset charset) {
        return new PrintStream(new FileOutputStream(descriptor), false, charset);
    }

    /**
     * Runs the program.
     *
     * @param args a verb and what it takes
     * @param terminal where to print
     * @return how it ended
     */
    public static ExitStatus run(List<String> args, Terminal terminal) {
        Optional<Verb> verb = args.isEmpty() ? Optional.empty() : Verbs.named(args.get(0));
        if (verb.isEmpty()) {
            return withoutVerb(args, terminal);
        }
        String help = NAME + " " + verb.get().name() + " --help";
        CommandLine command = new CommandLine(withHelp(verb.get())).setExpandAtFiles(false);
        try {
            ParseResult parsed = command.parseArgs(args.stream().skip(1).toArray(String[]::new));
            if (parsed.isUsageHelpRequested()) {
                command.usage(terminal.out());
                return ExitStatus.FINE;
            }
            return verb.get().run(parsed, terminal);
        } catch (CommandLine.UnmatchedArgumentException wrong) {
            String first = wrong.getUnmatched().get(0);
            return wrongUsage(
                    wrong.isUnknownOption() && !wrong.getSuggestions().isEmpty()
                            ? "There is no “" + first + "”; is "
                                    + wrong.getSuggestions().get(0) + " meant?"
                            : "“" + first + "” is not expected here; what has blanks in it goes in quotation marks.",
                    help,
                    terminal);
        } catch (CommandLine.MissingParameterException wrong) {
            return wrongUsage("Something is missing: " + missing(wrong) + ".", help, terminal);
        } catch (ParameterException | WrongUsage wrong) {
            return wrongUsage(wrong.getMessage(), help, terminal);
        }
    }

    private static String missing(CommandLine.MissingParameterException wrong) {
        return wrong.getMissing().stream()
                .map(arg -> arg.isOption()
                        ? "what follows " + ((CommandLine.Model.OptionSpec) arg).longestName()
                        : "the " + arg.paramLabel().toLowerCase(Locale.ROOT))
                .collect(Collectors.joining(", "));
    }

    private static CommandSpec withHelp(Verb verb) {
        CommandSpec spec = verb.spec().name(NAME + " " + verb.name());
        spec.usageMessage().width(Verbs.WIDTH);
        spec.addOption(CommandLine.Model.OptionSpec.builder("-h", "--help")
                .usageHelp(true)
                .description("Show this help.")
                .build());
        return spec;
    }

    private static ExitStatus withoutVerb(List<String> args, Terminal terminal) {
        CommandLine all = Verbs.all();
        boolean asksForHelp = args.isEmpty() || List.of("-h", "--help", "help").contains(args.get(0));
        if (asksForHelp) {
            all.usage(terminal.out());
            return args.isEmpty() ? ExitStatus.WRONG_USAGE : ExitStatus.FINE;
        }
        if (Arrays.asList("-V", "--version").contains(args.get(0))) {
            terminal.out().println(NAME + " " + VERSION);
            return ExitStatus.FINE;
        }
        return wrongUsage("There is no “" + args.get(0) + "” to be done.", NAME + " --help", terminal);
    }

    private static ExitStatus wrongUsage(String message, String help, Terminal terminal) {
        terminal.err().println(Visible.text(message.replace('\n', ' ')));
        terminal.err().println("→ See: " + help);
        return ExitStatus.WRONG_USAGE;
    }
}
