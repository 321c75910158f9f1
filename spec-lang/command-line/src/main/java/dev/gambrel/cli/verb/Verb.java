package dev.gambrel.cli.verb;

import dev.gambrel.cli.terminal.ExitStatus;
import dev.gambrel.cli.terminal.Terminal;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** One thing that the program does. */
public interface Verb {
    /**
     * What it is called on the command line.
     *
     * @return one word
     */
    String name();

    /**
     * What it takes, for parsing, help and completion.
     *
     * @return a new description, without the help option that every verb has
     */
    CommandSpec spec();

    /**
     * Does it.
     *
     * @param parsed what stands on the command line
     * @param terminal where to print
     * @return how it ended
     * @throws WrongUsage if it was called in a way that it does not know
     */
    ExitStatus run(ParseResult parsed, Terminal terminal);
}
