package dev.gambrel.cli.check;

import dev.gambrel.cli.argument.FileArgument;
import dev.gambrel.cli.file.SpecFileReader;
import dev.gambrel.cli.file.Summary;
import dev.gambrel.cli.json.DiagnosticJson;
import dev.gambrel.cli.terminal.ExitStatus;
import dev.gambrel.cli.terminal.FindingsPrinter;
import dev.gambrel.cli.terminal.Terminal;
import dev.gambrel.cli.verb.Verb;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.diagnostic.Visible;
import dev.gambrel.tree.allowance.AllowedWarning;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;

/** Reads specifications and says what is wrong with them. */
public final class CheckVerb implements Verb {
    /** What it is called on the command line. */
    public static final String NAME = "check";

    @Override
    public String name() {
        return NAME;
    }

    @Override
    public CommandSpec spec() {
        CommandSpec spec = CommandSpec.create();
        spec.usageMessage()
                .description("Read specifications (.cuts) or trees (.json) and say what is wrong with them.");
        spec.addOption(OptionSpec.builder("--json")
                .description("Print the findings as JSON.")
                .build());
        spec.addOption(OptionSpec.builder("--all")
                .description("Print all findings, not only the first 50.")
                .build());
        spec.addOption(OptionSpec.builder("--allowed")
                .description("Print what is allowed too, each with the reason.")
                .build());
        spec.addPositional(FileArgument.several("The files to check."));
        return spec;
    }

    @Override
    public ExitStatus run(ParseResult parsed, Terminal terminal) {
        List<String> files = FileArgument.files(parsed);
        return parsed.hasMatchedOption("--json")
                ? checkAsJson(files, parsed, terminal)
                : checkAsText(files, parsed, terminal);
    }

    private static ExitStatus checkAsText(List<String> files, ParseResult parsed, Terminal terminal) {
        boolean all = parsed.hasMatchedOption("--all");
        ExitStatus status = ExitStatus.FINE;
        for (String file : files) {
            Result<SpecFileReader.Read> result = SpecFileReader.read(file);
            FindingsPrinter.print(result.diagnostics(), terminal.out(), terminal.colour(), all);
            if (parsed.hasMatchedOption("--allowed")) {
                FindingsPrinter.printAllowed(allowed(result), terminal.out(), terminal.colour(), all);
            }
            terminal.out()
                    .print(result.value()
                            .map(read -> Summary.of(read, result.diagnostics()))
                            .orElseGet(() -> Visible.text(file) + ": "
                                    + FindingsPrinter.count(result.diagnostics()) + ".\n"
                                    + "→ More about a finding: gambrel explain "
                                    + result.diagnostics().get(0).code().id() + "\n"));
            status = status.and(ExitStatus.of(result.diagnostics()));
        }
        return status;
    }

    private static List<AllowedWarning> allowed(Result<SpecFileReader.Read> result) {
        return result.value().map(SpecFileReader.Read::allowed).orElse(List.of());
    }

    private static ExitStatus checkAsJson(List<String> files, ParseResult parsed, Terminal terminal) {
        List<Diagnostic> findings = new ArrayList<>();
        List<AllowedWarning> allowed = new ArrayList<>();
        for (String file : files) {
            Result<SpecFileReader.Read> result = SpecFileReader.read(file);
            findings.addAll(result.diagnostics());
            if (parsed.hasMatchedOption("--allowed")) {
                allowed.addAll(allowed(result));
            }
        }
        terminal.out().print(DiagnosticJson.write(findings, allowed));
        return ExitStatus.of(findings);
    }
}
