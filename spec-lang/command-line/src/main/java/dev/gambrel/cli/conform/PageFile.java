package dev.gambrel.cli.conform;

import dev.gambrel.cli.file.AskedFile;
import dev.gambrel.cli.terminal.Cautions;
import dev.gambrel.cli.terminal.ExitStatus;
import dev.gambrel.cli.terminal.Terminal;
import dev.gambrel.yields.conformance.report.ConformityPage;
import dev.gambrel.yields.conformance.report.ConformitySheet;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;

/** The page to be signed, where one is asked for. */
record PageFile(AskedFile file) {
    private static final String NAME = "--html";

    static OptionSpec option() {
        return AskedFile.option(NAME, "Also write the answer to this file (.html) as a page to be printed and signed.");
    }

    static Optional<PageFile> of(ParseResult parsed, String house, String buyer) {
        return AskedFile.of(AskedFile.Kind.PAGE, NAME, parsed, List.of(house, buyer))
                .map(PageFile::new);
    }

    ExitStatus write(ConformitySheet sheet, Terminal terminal) {
        List<String> cautions = Stream.concat(ConformVerb.NO_ADVICE.lines(), Cautions.TEXT.lines())
                .toList();
        String page = ConformityPage.of(sheet, cautions);
        return file.write(page.getBytes(StandardCharsets.UTF_8), "The page to be signed", terminal);
    }
}
