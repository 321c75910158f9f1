package dev.gambrel.cli;

import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** One thing that the program does. */
interface Verb {
    String name();

    /** What it takes, for parsing, help and completion. */
    CommandSpec spec();

    ExitStatus run(ParseResult parsed, Terminal terminal);
}
