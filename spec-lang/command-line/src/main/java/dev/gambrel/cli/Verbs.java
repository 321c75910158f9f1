package dev.gambrel.cli;

import dev.gambrel.cli.balance.BalanceVerb;
import dev.gambrel.cli.blend.BlendVerb;
import dev.gambrel.cli.carcasses.CarcassesVerb;
import dev.gambrel.cli.catalogue.CatalogueVerb;
import dev.gambrel.cli.check.CheckVerb;
import dev.gambrel.cli.compare.CompareVerb;
import dev.gambrel.cli.conform.ConformVerb;
import dev.gambrel.cli.drift.DriftVerb;
import dev.gambrel.cli.estimate.EstimateVerb;
import dev.gambrel.cli.explain.ExplainVerb;
import dev.gambrel.cli.format.FormatVerb;
import dev.gambrel.cli.number.NumberVerb;
import dev.gambrel.cli.origin.OriginVerb;
import dev.gambrel.cli.packs.PacksVerb;
import dev.gambrel.cli.shares.SharesVerb;
import dev.gambrel.cli.tree.TreeVerb;
import dev.gambrel.cli.verb.Verb;
import dev.gambrel.cli.yield.YieldVerb;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

/** All that the program does. */
final class Verbs {
    /** Columns of help. */
    static final int WIDTH = 110;

    private Verbs() {}

    static Optional<Verb> named(String name) {
        return switch (name) {
            case CheckVerb.NAME -> Optional.of(new CheckVerb());
            case YieldVerb.NAME -> Optional.of(new YieldVerb());
            case EstimateVerb.NAME -> Optional.of(new EstimateVerb());
            case CarcassesVerb.NAME -> Optional.of(new CarcassesVerb());
            case BalanceVerb.NAME -> Optional.of(new BalanceVerb());
            case DriftVerb.NAME -> Optional.of(new DriftVerb());
            case SharesVerb.NAME -> Optional.of(new SharesVerb());
            case BlendVerb.NAME -> Optional.of(new BlendVerb());
            case PacksVerb.NAME -> Optional.of(new PacksVerb());
            case NumberVerb.NAME -> Optional.of(new NumberVerb());
            case TreeVerb.NAME -> Optional.of(new TreeVerb());
            case OriginVerb.NAME -> Optional.of(new OriginVerb());
            case CatalogueVerb.NAME -> Optional.of(new CatalogueVerb());
            case CompareVerb.NAME -> Optional.of(new CompareVerb());
            case ConformVerb.NAME -> Optional.of(new ConformVerb());
            case FormatVerb.NAME -> Optional.of(new FormatVerb());
            case ExplainVerb.NAME -> Optional.of(new ExplainVerb());
            case CompletionVerb.NAME -> Optional.of(new CompletionVerb());
            default -> Optional.empty();
        };
    }

    static List<String> names() {
        return List.of(
                CheckVerb.NAME,
                YieldVerb.NAME,
                EstimateVerb.NAME,
                CarcassesVerb.NAME,
                BalanceVerb.NAME,
                DriftVerb.NAME,
                SharesVerb.NAME,
                BlendVerb.NAME,
                PacksVerb.NAME,
                NumberVerb.NAME,
                TreeVerb.NAME,
                OriginVerb.NAME,
                CompareVerb.NAME,
                ConformVerb.NAME,
                FormatVerb.NAME,
                CatalogueVerb.NAME,
                ExplainVerb.NAME,
                CompletionVerb.NAME);
    }

    /** The whole program, for its help and its completion. */
    static CommandLine all() {
        CommandSpec root = CommandSpec.create().name(Gambrel.NAME);
        root.usageMessage()
                .width(WIDTH)
                .description("Reads how a carcass is cut, checks it, and says what the carcass should give.")
                .footer(
                        "",
                        "Exit status: 0 fine, 1 errors found, 2 wrong usage, 3 could not read or a limit was hit;",
                        "of conform also 4 not shown to conform, 5 does not conform.",
                        "Figures are estimates; knife, saw, temperature and risk material need the usual care",
                        "and follow local rules.");
        root.addOption(OptionSpec.builder("-h", "--help")
                .usageHelp(true)
                .description("Show this help.")
                .build());
        root.addOption(OptionSpec.builder("-V", "--version")
                .versionHelp(true)
                .description("Show the version.")
                .build());
        names().forEach(name -> root.addSubcommand(
                name, new CommandLine(named(name).orElseThrow().spec())));
        return new CommandLine(root);
    }
}
