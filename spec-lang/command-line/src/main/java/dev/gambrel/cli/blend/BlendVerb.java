package dev.gambrel.cli.blend;

import dev.gambrel.blends.BatchOrder;
import dev.gambrel.blends.CheapestBatch;
import dev.gambrel.blends.LargestBatch;
import dev.gambrel.blends.LeanTarget;
import dev.gambrel.blends.LeastCost;
import dev.gambrel.blends.Tub;
import dev.gambrel.blends.Tubs;
import dev.gambrel.cli.argument.DecimalsArgument;
import dev.gambrel.cli.argument.FormArgument;
import dev.gambrel.cli.argument.FormArgument.Form;
import dev.gambrel.cli.argument.MeasureArgument;
import dev.gambrel.cli.argument.UnitArgument;
import dev.gambrel.cli.argument.WeightArgument;
import dev.gambrel.cli.argument.WorkArgument;
import dev.gambrel.cli.json.BlendJson;
import dev.gambrel.cli.terminal.ExitStatus;
import dev.gambrel.cli.terminal.FindingsPrinter;
import dev.gambrel.cli.terminal.Terminal;
import dev.gambrel.cli.verb.Verb;
import dev.gambrel.cli.verb.WrongUsage;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Result;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParseResult;

/** Blends tubs of trim to a lean target. */
public final class BlendVerb implements Verb {
    /** What it is called on the command line. */
    public static final String NAME = "blend";

    @Override
    public String name() {
        return NAME;
    }

    @Override
    public CommandSpec spec() {
        CommandSpec spec = CommandSpec.create();
        spec.usageMessage()
                .description(
                        "Blend tubs of trim to a lean target: the largest batch, what is left of each tub, and what would"
                                + " use that up; or a batch of a given weight.")
                .footer(
                        "",
                        "Example: gambrel blend --tub \"80s = 120 kg, lean 80 %% visual\" --tub \"flank = 60 kg, lean 55 %%"
                                + " visual\" --lean \"at least 75 %% visual\"");
        spec.addOption(TubArgument.option());
        spec.addOption(TargetArgument.option());
        BatchArguments.options().forEach(spec::addOption);
        StreamArguments.options().forEach(spec::addOption);
        spec.addOption(
                WeightArgument.option("Of a specification, the weight of one carcass with its unit and basis, such as"
                        + " \"22 kg cold\"; without it, the middle of the band."));
        WorkArgument.options().forEach(spec::addOption);
        spec.addOption(MeasureArgument.option());
        spec.addOption(UnitArgument.option());
        spec.addOption(DecimalsArgument.option());
        spec.addOption(FormArgument.TEXT_OR_JSON.option());
        spec.addPositional(PositionalParamSpec.builder()
                .paramLabel("FILE")
                .arity("0..1")
                .type(String.class)
                .description("A specification (.cuts), or a tree (.json), whose streams are tubs too.")
                .build());
        return spec;
    }

    @Override
    public ExitStatus run(ParseResult parsed, Terminal terminal) {
        boolean json = FormArgument.TEXT_OR_JSON.form(parsed) == Form.JSON;
        LeanTarget target = TargetArgument.target(parsed);
        List<Diagnostic> findings = new ArrayList<>();
        List<Tub> all = new ArrayList<>(TubArgument.tubs(parsed));
        StreamTubs streams = parsed.hasMatchedPositional(0)
                ? StreamArguments.tubs(parsed, target, findings).orElse(StreamTubs.NONE)
                : StreamTubs.NONE;
        all.addAll(streams.tubs());
        Optional<String> printed = Result.hasError(findings)
                ? Optional.empty()
                : blended(parsed, new Mixing(tubs(all, streams.leftOut()), target, streams), json, findings);
        FindingsPrinter.print(findings, terminal.err(), terminal.colour(), false);
        printed.ifPresent(terminal.out()::print);
        return ExitStatus.of(findings);
    }

    private record Mixing(Result<Tubs> tubs, LeanTarget target, StreamTubs streams) {}

    private static Result<Tubs> tubs(List<Tub> all, List<String> leftOut) {
        if (all.isEmpty()) {
            throw new WrongUsage(
                    "There is nothing to blend; name what is there with --tub, or a specification whose streams"
                            + " say how lean they are."
                            + (leftOut.isEmpty() ? "" : " Left out: " + String.join("; ", leftOut) + "."));
        }
        return Tubs.of(all);
    }

    private static Optional<String> blended(
            ParseResult parsed, Mixing mixing, boolean json, List<Diagnostic> findings) {
        findings.addAll(mixing.tubs().diagnostics());
        if (mixing.tubs().value().isEmpty()) {
            return Optional.empty();
        }
        Tubs tubs = mixing.tubs().orElseThrow();
        BlendText text = new BlendText(
                tubs, mixing.target(), mixing.streams(), UnitArgument.unit(parsed), DecimalsArgument.decimals(parsed));
        if (BatchArguments.isGiven(parsed)) {
            BatchOrder order = BatchArguments.order(parsed, tubs, mixing.target());
            Result<CheapestBatch> batch = new LeastCost().of(order);
            findings.addAll(batch.diagnostics());
            return batch.value()
                    .map(found -> json
                            ? BlendJson.write(order, found, mixing.streams().leftOut())
                            : text.cheapest(found, order));
        }
        Result<LargestBatch> batch = LargestBatch.of(tubs, mixing.target());
        findings.addAll(batch.diagnostics());
        return batch.value()
                .map(found -> json
                        ? BlendJson.write(
                                mixing.target(), found, mixing.streams().leftOut())
                        : text.largest(found));
    }
}
