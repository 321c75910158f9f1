package dev.gambrel.cli.argument;

import dev.gambrel.batches.sheets.PriceList;
import dev.gambrel.cli.verb.WrongUsage;
import dev.gambrel.compiler.source.FolderSources;
import dev.gambrel.compiler.source.Found;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.limits.Limits;
import dev.gambrel.yields.plan.YieldPlan;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;

/** What the parts fetch. */
public final class PricesArgument {
    private static final String NAME = "--prices";

    private PricesArgument() {}

    /**
     * Takes the file.
     *
     * @return the option
     */
    public static OptionSpec option() {
        return OptionSpec.builder(NAME)
                .paramLabel("FILE")
                .type(String.class)
                .description(
                        "What the parts fetch, as CSV: part,price,unit. With it the difference is told in",
                        "money too.")
                .build();
    }

    /**
     * Checks that the name may be that of a file, before anything is read.
     *
     * @param parsed what stands on the command line
     * @return the file; nothing where none is named
     * @throws WrongUsage if it is no name of a file
     */
    public static Optional<File> file(ParseResult parsed) {
        List<String> named =
                parsed.hasMatchedOption(NAME) ? List.of(parsed.<String>matchedOptionValue(NAME, "")) : List.of();
        return named.stream()
                .map(name -> new File(name, FileArgument.path(name)))
                .findFirst();
    }

    /**
     * A list of prices that is not read yet.
     *
     * @param name as it stands on the command line
     * @param path where it is
     */
    public record File(String name, Path path) {
        /**
         * Reads the list.
         *
         * @param plan the specification as it was worked
         * @param findings takes what is found about it
         * @return the prices; none where they cannot be used
         */
        public PriceList read(YieldPlan plan, Consumer<Diagnostic> findings) {
            Found found = FolderSources.read(path, String.valueOf(path.getFileName()), Limits.DEFAULT);
            if (found instanceof Found.Refused refused) {
                findings.accept(refused.finding(name, Limits.DEFAULT));
                return PriceList.NONE;
            }
            var list = PriceList.read(((Found.Text) found).text(), plan);
            list.diagnostics().forEach(findings);
            return list.value().orElse(PriceList.NONE);
        }
    }
}
