package dev.gambrel.cli.conform;

import dev.gambrel.cli.argument.FileArgument;
import dev.gambrel.cli.file.WholeFile;
import dev.gambrel.cli.terminal.Cautions;
import dev.gambrel.cli.terminal.ExitStatus;
import dev.gambrel.cli.terminal.Terminal;
import dev.gambrel.cli.verb.WrongUsage;
import dev.gambrel.diagnostic.Visible;
import dev.gambrel.yields.conformance.report.ConformityPage;
import dev.gambrel.yields.conformance.report.ConformitySheet;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;

/** The page to be signed, where one is asked for. */
record PageFile(String name) {
    private static final String NAME = "--html";

    static OptionSpec option() {
        return OptionSpec.builder(NAME)
                .paramLabel("FILE")
                .type(String.class)
                .description("Also write the answer to this file (.html) as a page to be printed and signed.")
                .build();
    }

    /** A page is never written over what was read: its name ends otherwise. */
    static Optional<PageFile> of(ParseResult parsed, String house, String buyer) {
        if (!parsed.hasMatchedOption(NAME)) {
            return Optional.empty();
        }
        String name = parsed.matchedOptionValue(NAME, "");
        String ending = name.toLowerCase(Locale.ROOT);
        if (!ending.endsWith(".html") && !ending.endsWith(".htm")) {
            throw new WrongUsage("“" + name + "” is not the name of a page; let it end in .html.");
        }
        Path page = FileArgument.path(name);
        boolean isInput = Stream.of(house, buyer).anyMatch(read -> WholeFile.isSame(FileArgument.path(read), page));
        if (isInput) {
            throw new WrongUsage("The page would be written over a text that is compared; name another file.");
        }
        return Optional.of(new PageFile(name));
    }

    ExitStatus write(ConformitySheet sheet, Terminal terminal) {
        List<String> cautions = Stream.concat(ConformVerb.NO_ADVICE.lines(), Cautions.TEXT.lines())
                .toList();
        if (!WholeFile.write(FileArgument.path(name), ConformityPage.of(sheet, cautions))) {
            return WholeFile.couldNot(name, terminal);
        }
        terminal.err().println("The page to be signed was written to " + Visible.text(name) + ".");
        return ExitStatus.FINE;
    }
}
