package dev.gambrel.cli.origin;

import dev.gambrel.cli.argument.FileArgument;
import dev.gambrel.cli.argument.FormArgument;
import dev.gambrel.cli.argument.FormArgument.Form;
import dev.gambrel.cli.json.OriginJson;
import dev.gambrel.cli.origin.report.NamedPart;
import dev.gambrel.cli.origin.report.OriginReport;
import dev.gambrel.cli.origin.report.OriginSection;
import dev.gambrel.cli.origin.report.PartFinder;
import dev.gambrel.cli.terminal.ExitStatus;
import dev.gambrel.cli.terminal.FindingsPrinter;
import dev.gambrel.cli.terminal.Terminal;
import dev.gambrel.cli.verb.Verb;
import dev.gambrel.cli.verb.WrongUsage;
import dev.gambrel.compiler.Compilation;
import dev.gambrel.compiler.SpecCompiler;
import dev.gambrel.diagnostic.Result;
import java.util.List;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParseResult;

/** Says where the values of a specification come from. */
public final class OriginVerb implements Verb {
    /** What it is called on the command line. */
    public static final String NAME = "origin";

    @Override
    public String name() {
        return NAME;
    }

    @Override
    public CommandSpec spec() {
        CommandSpec spec = CommandSpec.create();
        spec.usageMessage()
                .description("Say where each value of a part comes from: file, line, and the source in full.")
                .footer("", "Example: gambrel origin hogget.cuts \"leg / topside\"");
        spec.addOption(FormArgument.TEXT_OR_JSON.option());
        spec.addPositional(FileArgument.one("The specification (.cuts)."));
        spec.addPositional(PositionalParamSpec.builder()
                .paramLabel("PART")
                .index("1")
                .arity("0..1")
                .type(String.class)
                .description("The part, with the cuts that it is cut from or without; the carcass if not said.")
                .build());
        return spec;
    }

    @Override
    public ExitStatus run(ParseResult parsed, Terminal terminal) {
        String file = FileArgument.file(parsed);
        Form form = FormArgument.TEXT_OR_JSON.form(parsed);
        if (file.endsWith(".json")) {
            throw new WrongUsage("A tree in JSON does not tell where its values come from; name the specification.");
        }
        Result<Compilation> result = new SpecCompiler().compile(FileArgument.path(file));
        FindingsPrinter.print(result.diagnostics(), terminal.err(), terminal.colour(), false);
        if (result.value().isPresent()) {
            List<OriginSection> sections = sections(result.value().get(), parsed.matchedPositionalValue(1, "carcass"));
            terminal.out().print(form == Form.JSON ? OriginJson.write(sections) : OriginText.print(sections));
        }
        return ExitStatus.of(result.diagnostics());
    }

    private static List<OriginSection> sections(Compilation compilation, String words) {
        PartFinder finder = new PartFinder(compilation.tree());
        List<NamedPart> parts = finder.find(words);
        if (parts.isEmpty()) {
            throw new WrongUsage("There is no part called “" + words + "”"
                    + finder.nearest(words)
                            .map(near -> "; did you mean “" + near + "”?")
                            .orElse(" in this specification."));
        }
        return OriginReport.of(compilation, finder, parts);
    }
}
