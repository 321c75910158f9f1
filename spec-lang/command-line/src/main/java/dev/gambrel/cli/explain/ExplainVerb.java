package dev.gambrel.cli.explain;

import dev.gambrel.cli.terminal.ExitStatus;
import dev.gambrel.cli.terminal.Terminal;
import dev.gambrel.cli.verb.Verb;
import dev.gambrel.cli.verb.WrongUsage;
import dev.gambrel.diagnostic.Code;
import dev.gambrel.text.NearestName;
import dev.gambrel.text.TradeName;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParseResult;

/** Prints the page about a kind of finding. */
public final class ExplainVerb implements Verb {
    /** What it is called on the command line. */
    public static final String NAME = "explain";

    @Override
    public String name() {
        return NAME;
    }

    @Override
    public CommandSpec spec() {
        CommandSpec spec = CommandSpec.create();
        spec.usageMessage()
                .description("Explain a kind of finding, with a wrong and a right example; without one, list all.");
        spec.addPositional(PositionalParamSpec.builder()
                .paramLabel("CODE")
                .arity("0..1")
                .type(String.class)
                .description("The number or the name of the finding, such as G0501 or sum-not-100.")
                .build());
        return spec;
    }

    @Override
    public ExitStatus run(ParseResult parsed, Terminal terminal) {
        String wanted = parsed.matchedPositionalValue(0, "");
        if (wanted.isEmpty()) {
            Codes.all().forEach(code -> terminal.out().println(code.id() + "  " + code.slug()));
            return ExitStatus.FINE;
        }
        terminal.out().print(page(find(wanted)));
        return ExitStatus.FINE;
    }

    private static Code find(String wanted) {
        return Codes.all().stream()
                .filter(code ->
                        code.id().equalsIgnoreCase(wanted) || code.slug().equalsIgnoreCase(wanted))
                .findFirst()
                .orElseThrow(() -> new WrongUsage("There is no finding called “" + wanted + "”." + nearest(wanted)));
    }

    private static String nearest(String wanted) {
        List<TradeName> slugs =
                Codes.all().stream().map(code -> TradeName.of(code.slug())).toList();
        return NearestName.of(wanted, slugs)
                .map(near -> " Did you mean “" + near + "”?")
                .orElse("");
    }

    private static String page(Code code) {
        try (InputStream in = ExplainVerb.class.getResourceAsStream(code.id() + ".md")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
