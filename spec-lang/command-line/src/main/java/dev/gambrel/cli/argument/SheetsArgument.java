package dev.gambrel.cli.argument;

import dev.gambrel.batches.sheets.SheetReport;
import dev.gambrel.batches.sheets.WeighSheet;
import dev.gambrel.cli.verb.WrongUsage;
import dev.gambrel.compiler.source.FolderSources;
import dev.gambrel.compiler.source.Found;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.limits.Limits;
import dev.gambrel.tree.CutTree;
import dev.gambrel.yields.working.Working;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Consumer;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;

/** The weigh sheets of cutting tests. */
public final class SheetsArgument {
    private static final String NAME = "--sheet";
    private static final String UNBALANCED = "--unbalanced";

    private SheetsArgument() {}

    /**
     * Takes the files.
     *
     * @return the option
     */
    public static OptionSpec option() {
        return OptionSpec.builder(NAME)
                .paramLabel("FILE")
                .type(List.class)
                .auxiliaryTypes(String.class)
                .arity("1..*")
                .required(true)
                .description("The weigh sheets of cutting tests, as CSV or JSON.")
                .build();
    }

    /**
     * Takes sheets that are in doubt.
     *
     * @return the option
     */
    public static OptionSpec unbalancedOption() {
        return OptionSpec.builder(UNBALANCED)
                .description("Take sheets too that do not balance; they are left out and named otherwise.")
                .build();
    }

    /**
     * Whether sheets in doubt count.
     *
     * @param parsed what stands on the command line
     * @return true if it was asked for
     */
    public static boolean evenUnbalanced(ParseResult parsed) {
        return parsed.hasMatchedOption(UNBALANCED);
    }

    /**
     * Checks that the names may be names of files, before anything is read.
     *
     * @param parsed what stands on the command line
     * @return the files
     * @throws WrongUsage if one is no name of a file
     */
    public static Files files(ParseResult parsed) {
        List<String> names = parsed.matchedOptionValue(NAME, List.of());
        return new Files(names, names.stream().map(FileArgument::path).toList());
    }

    /**
     * Weigh sheets that are not read yet.
     *
     * @param names as they stand on the command line
     * @param paths where they are
     */
    public record Files(List<String> names, List<Path> paths) {
        /** Copies the lists. */
        public Files {
            names = List.copyOf(names);
            paths = List.copyOf(paths);
        }

        /**
         * Reads the sheets and works them out.
         *
         * @param tree the specification by which was cut
         * @param working how cuts were worked
         * @param findings takes what is found about them
         * @return those that can be used, in order
         */
        public List<SheetReport> read(CutTree tree, Working working, Consumer<Diagnostic> findings) {
            List<SheetReport> reports = new ArrayList<>();
            for (int i = 0; i < names.size(); i++) {
                Result<WeighSheet> sheet = sheet(i, tree, working);
                sheet.diagnostics().forEach(findings);
                sheet.value().map(SheetReport::of).ifPresent(reports::add);
            }
            return reports;
        }

        private Result<WeighSheet> sheet(int index, CutTree tree, Working working) {
            Path path = paths.get(index);
            Found found = FolderSources.read(path, called(index), Limits.DEFAULT);
            return found instanceof Found.Text text
                    ? WeighSheet.read(text.text(), tree, working)
                    : Result.failed(List.of(((Found.Refused) found).finding(names.get(index), Limits.DEFAULT)));
        }

        /** By the name of its file; sheets of one name in several folders by what was written. */
        private String called(int index) {
            Path name = paths.get(index).getFileName();
            long alike = paths.stream()
                    .filter(other -> Objects.equals(other.getFileName(), name))
                    .count();
            return alike > 1 ? names.get(index) : String.valueOf(name);
        }
    }
}
