package dev.gambrel.cli;

import dev.gambrel.cli.terminal.ExitStatus;
import dev.gambrel.cli.terminal.Terminal;
import dev.gambrel.cli.verb.Verb;
import picocli.AutoComplete;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** Prints a script that lets a shell complete the program's words. */
final class CompletionVerb implements Verb {
    static final String NAME = "completion";

    @Override
    public String name() {
        return NAME;
    }

    @Override
    public CommandSpec spec() {
        CommandSpec spec = CommandSpec.create();
        spec.usageMessage().description("Print a script that lets bash or zsh complete the words of this program.");
        return spec;
    }

    @Override
    public ExitStatus run(ParseResult parsed, Terminal terminal) {
        terminal.out().print(AutoComplete.bash(Gambrel.NAME, Verbs.all()));
        return ExitStatus.FINE;
    }
}
