package dev.gambrel.cli.tree;

import dev.gambrel.cli.argument.FileArgument;
import dev.gambrel.cli.file.SpecFileReader;
import dev.gambrel.cli.file.TreeFile;
import dev.gambrel.cli.terminal.ExitStatus;
import dev.gambrel.cli.terminal.FindingsPrinter;
import dev.gambrel.cli.terminal.Terminal;
import dev.gambrel.cli.verb.Verb;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.json.TreeJsonWriter;
import dev.gambrel.tree.CutTree;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;

/** Writes the tree of a specification as JSON. */
public final class TreeVerb implements Verb {
    /** What it is called on the command line. */
    public static final String NAME = "tree";

    @Override
    public String name() {
        return NAME;
    }

    @Override
    public CommandSpec spec() {
        CommandSpec spec = CommandSpec.create();
        spec.usageMessage().description("Write the tree of a specification as JSON.");
        spec.addOption(OptionSpec.builder("--out")
                .paramLabel("FILE")
                .type(String.class)
                .description("Write to this file instead of printing.")
                .build());
        spec.addPositional(FileArgument.one("The specification."));
        return spec;
    }

    @Override
    public ExitStatus run(ParseResult parsed, Terminal terminal) {
        Result<SpecFileReader.Read> result = SpecFileReader.read(FileArgument.file(parsed));
        FindingsPrinter.print(result.diagnostics(), terminal.err(), terminal.colour(), false);
        if (result.value().isPresent()) {
            CutTree tree = result.value().get().tree();
            if (!parsed.hasMatchedOption("--out")) {
                terminal.out().print(TreeJsonWriter.write(tree));
            } else {
                return TreeFile.write(
                        tree, FileArgument.file(parsed), parsed.matchedOptionValue("--out", ""), terminal);
            }
        }
        return ExitStatus.of(result.diagnostics());
    }
}
