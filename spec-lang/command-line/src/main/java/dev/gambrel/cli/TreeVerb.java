package dev.gambrel.cli;

import dev.gambrel.diagnostic.Result;
import dev.gambrel.diagnostic.Visible;
import dev.gambrel.json.TreeJsonWriter;
import dev.gambrel.tree.CutTree;
import java.nio.file.Path;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParseResult;

/** Writes the tree of a specification as JSON. */
final class TreeVerb implements Verb {
    static final String NAME = "tree";

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
        spec.addPositional(PositionalParamSpec.builder()
                .paramLabel("FILE")
                .arity("1")
                .required(true)
                .type(String.class)
                .description("The specification.")
                .build());
        return spec;
    }

    @Override
    public ExitStatus run(ParseResult parsed, Terminal terminal) {
        Result<SpecFileReader.Read> result = SpecFileReader.read(parsed.matchedPositionalValue(0, ""));
        FindingsPrinter.print(result.diagnostics(), terminal.err(), terminal.colour(), false);
        if (result.value().isPresent()) {
            CutTree tree = result.value().get().tree();
            if (!parsed.hasMatchedOption("--out")) {
                terminal.out().print(TreeJsonWriter.write(tree));
            } else {
                return write(
                        tree, parsed.matchedPositionalValue(0, ""), parsed.matchedOptionValue("--out", ""), terminal);
            }
        }
        return ExitStatus.of(result.diagnostics());
    }

    static ExitStatus write(CutTree tree, String read, String file, Terminal terminal) {
        Path target = SpecFileReader.path(file);
        if (WholeFile.isSame(SpecFileReader.path(read), target)) {
            throw new WrongUsage("The tree would be written over the specification " + read + "; name another file.");
        }
        if (!WholeFile.write(target, TreeJsonWriter.write(tree))) {
            return WholeFile.couldNot(file, terminal);
        }
        terminal.out().println("The tree was written as JSON to " + Visible.text(file) + ".");
        return ExitStatus.FINE;
    }
}
