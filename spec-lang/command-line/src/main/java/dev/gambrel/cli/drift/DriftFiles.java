package dev.gambrel.cli.drift;

import dev.gambrel.cli.file.AskedFile;
import dev.gambrel.cli.file.PictureFile;
import dev.gambrel.cli.terminal.Cautions;
import dev.gambrel.cli.terminal.ExitStatus;
import dev.gambrel.cli.terminal.Terminal;
import dev.gambrel.cli.verb.WrongUsage;
import dev.gambrel.reports.page.DriftPage;
import dev.gambrel.reports.picture.DriftPicture;
import dev.gambrel.reports.svg.Picture;
import dev.gambrel.yields.control.ChartAnswer;
import dev.gambrel.yields.drift.CutDrift;
import dev.gambrel.yields.drift.Drift;
import dev.gambrel.yields.drift.PartDrift;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;

/**
 * The page and the chart that are asked for beside what is printed.
 *
 * @param pages none or one
 * @param pictures none or one
 * @param part of which the picture is, as written; empty if not said
 */
record DriftFiles(List<AskedFile> pages, List<AskedFile> pictures, String part) {
    private static final String HTML = "--html";
    private static final String PICTURE = "--part-picture";
    private static final String PART = "--part";

    static List<OptionSpec> options() {
        return List.of(
                AskedFile.option(HTML, "Also write it to this file (.html) as a page with its charts."),
                AskedFile.option(PICTURE, "Also draw the chart of one part to this file (.svg or .png)."),
                OptionSpec.builder(PART)
                        .paramLabel("PART")
                        .type(String.class)
                        .description("Of which part " + PICTURE + " is, such as \"leg / topside / fat\".")
                        .build());
    }

    static DriftFiles of(ParseResult parsed, List<String> read) {
        List<AskedFile> pictures = AskedFile.of(AskedFile.Kind.PICTURE, PICTURE, parsed, read).stream()
                .toList();
        String part = parsed.matchedOptionValue(PART, "");
        if (pictures.isEmpty() == parsed.hasMatchedOption(PART)) {
            throw new WrongUsage(
                    PICTURE + " and " + PART + " go together: the one names the file, the other the part.");
        }
        return new DriftFiles(
                AskedFile.of(AskedFile.Kind.PAGE, HTML, parsed, read).stream().toList(), pictures, part);
    }

    /** With an error among the findings it would not show all that was asked for. */
    ExitStatus refuse(Terminal terminal) {
        if (!pages.isEmpty() || !pictures.isEmpty()) {
            terminal.err().println("No page or picture was written, because of the errors above.");
        }
        return ExitStatus.FINE;
    }

    ExitStatus write(String title, List<String> about, Drift drift, Terminal terminal) {
        ExitStatus status = ExitStatus.FINE;
        List<Picture> drawn = new ArrayList<>();
        pictures.forEach(file -> drawn.add(chart(drift)));
        for (AskedFile page : pages) {
            String text =
                    DriftPage.of(title, about, drift, Cautions.TEXT.lines().toList());
            status = status.and(page.write(text.getBytes(StandardCharsets.UTF_8), "The page", terminal));
        }
        for (int i = 0; i < drawn.size(); i++) {
            status = status.and(PictureFile.write(pictures.get(i), drawn.get(i), "The chart", terminal));
        }
        return status;
    }

    private record Found(CutDrift cut, PartDrift part) {}

    private Picture chart(Drift drift) {
        List<Found> parts = drift.cuts().stream()
                .flatMap(cut -> cut.parts().stream().map(part -> new Found(cut, part)))
                .toList();
        String words = part.strip().replaceAll("\\s+", " ");
        List<Found> exactly = parts.stream()
                .filter(found -> address(drift, found).equalsIgnoreCase(words))
                .toList();
        List<Found> found = exactly.isEmpty()
                ? parts.stream()
                        .filter(each -> drift.node(each.part().part()).name().equalsIgnoreCase(words))
                        .toList()
                : exactly;
        if (found.size() != 1) {
            throw new WrongUsage((found.isEmpty()
                            ? "No part whose weight is known is called “"
                            : "Several parts are called “")
                    + part
                    + "”; there are: "
                    + String.join(
                            "; ",
                            (found.isEmpty() ? parts : found)
                                    .stream().map(each -> address(drift, each)).toList())
                    + ".");
        }
        return chart(drift, found.get(0));
    }

    private static String address(Drift drift, Found found) {
        return drift.node(found.part().part()).address();
    }

    private static Picture chart(Drift drift, Found found) {
        String address = address(drift, found);
        if (!(found.part().single() instanceof ChartAnswer.Drawn drawn)) {
            throw new WrongUsage("There is no chart of " + address + ": that needs " + ChartAnswer.FEWEST
                    + " tests that tell it and stray.");
        }
        return DriftPicture.of(drift, found.cut(), found.part(), drawn.chart(), "single tests");
    }
}
