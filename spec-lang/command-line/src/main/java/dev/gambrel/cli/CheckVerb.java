package dev.gambrel.cli;

import dev.gambrel.cli.json.DiagnosticJson;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.diagnostic.Visible;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParseResult;

/** Reads specifications and says what is wrong with them. */
final class CheckVerb implements Verb {
    static final String NAME = "check";

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
        spec.addPositional(PositionalParamSpec.builder()
                .paramLabel("FILE")
                .arity("1..*")
                .required(true)
                .type(String[].class)
                .description("The files to check.")
                .build());
        return spec;
    }

    @Override
    public ExitStatus run(ParseResult parsed, Terminal terminal) {
        String[] files = parsed.matchedPositionalValue(0, new String[0]);
        return parsed.hasMatchedOption("--json")
                ? checkAsJson(files, terminal)
                : checkAsText(files, parsed.hasMatchedOption("--all"), terminal);
    }

    private static ExitStatus checkAsText(String[] files, boolean all, Terminal terminal) {
        ExitStatus status = ExitStatus.FINE;
        for (String file : files) {
            Result<SpecFileReader.Read> result = SpecFileReader.read(file);
            FindingsPrinter.print(result.diagnostics(), terminal.out(), terminal.colour(), all);
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

    private static ExitStatus checkAsJson(String[] files, Terminal terminal) {
        List<Diagnostic> findings = new ArrayList<>();
        for (String file : files) {
            findings.addAll(SpecFileReader.read(file).diagnostics());
        }
        terminal.out().print(DiagnosticJson.write(findings));
        return ExitStatus.of(findings);
    }
}
