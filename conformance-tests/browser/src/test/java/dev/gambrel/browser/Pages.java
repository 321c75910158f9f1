package dev.gambrel.browser;

import dev.gambrel.batches.sheets.SheetHeading;
import dev.gambrel.batches.sheets.SheetReport;
import dev.gambrel.batches.sheets.WeighSheet;
import dev.gambrel.compiler.SpecCompiler;
import dev.gambrel.reports.page.CuttingTestPage;
import dev.gambrel.reports.page.DriftPage;
import dev.gambrel.text.SourceText;
import dev.gambrel.tree.CutTree;
import dev.gambrel.yields.cuttingtest.Scale;
import dev.gambrel.yields.drift.Baseline;
import dev.gambrel.yields.drift.Drift;
import dev.gambrel.yields.drift.LabelledTest;
import dev.gambrel.yields.working.Working;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Pages of real, of large and of hostile sheets. */
final class Pages {
    private static final Path EXAMPLES = Path.of(System.getProperty("basedir", ""), "..", "..", "examples");
    private static final CutTree HOGGET = new SpecCompiler()
            .compile(EXAMPLES.resolve("marram").resolve("hogget.cuts"))
            .orElseThrow()
            .tree();
    private static final String HOSTILE =
            "</dd></section><script>alert(1)</script><img src=x onerror=alert(1)> & \u202e\u0007 \"' 羊腿 ";

    private Pages() {}

    static SheetReport marram(String number) {
        String name = "hogget-" + number + ".csv";
        return report(HOGGET, name, read(EXAMPLES.resolve("weigh-sheets").resolve(name)));
    }

    static List<SheetReport> allOfMarram() {
        return IntStream.rangeClosed(1, 12)
                .mapToObj(i -> marram(i < 10 ? "0" + i : Integer.toString(i)))
                .toList();
    }

    /** Whatever stands on a sheet may come from anybody. */
    static SheetReport hostile() {
        WeighSheet sheet = marram("05").sheet();
        SheetHeading heading = sheet.heading();
        Scale scale = new Scale(HOSTILE, 0.005, 0, 0.002);
        return SheetReport.of(new WeighSheet(
                HOSTILE + ".csv",
                new SheetHeading(
                        HOSTILE,
                        HOSTILE + "w".repeat(10_000),
                        HOSTILE + "lot ".repeat(300),
                        List.of(scale),
                        heading.carcass(),
                        heading.carcassScale()),
                sheet.expected(),
                sheet.readings()));
    }

    /** Some 500 parts, a chain of cuts twenty deep among them, with names as long as names may be. */
    static SheetReport large(Path folder) {
        StringBuilder spec = new StringBuilder("""
                language 1
                species deer {
                }
                specification "Many parts" revision 1 for deer
                carcass cold, 20 kg to 24 kg
                stream mince, saleable
                """);
        StringBuilder sheet = new StringBuilder("""
                specification,Many parts
                revision,1
                scale,bench,5 g,1 g
                carcass,22.00 kg,cold
                part,pieces,gross,tare,unit
                """);
        for (char cut = 'a'; cut < 'y'; cut++) {
            spec.append("cut block ").append(cut).append(" 4 % ± 0.3 % {\n");
            for (char part = 'a'; part < 't'; part++) {
                spec.append("cut piece ").append(part).append(cut).append(" 5 % ± 0.5 % -> mince\n");
                sheet.append("piece ").append(part).append(cut).append(",single,0.045,0,kg\n");
            }
            spec.append("rest -> mince\n}\n");
        }
        for (int level = 0; level < 20; level++) {
            spec.append("cut ")
                    .append(longName(level))
                    .append(level == 0 ? " 3 %" : " 80 %")
                    .append(" ± 0.3 % {\n");
        }
        spec.append("rest -> mince\n}\n".repeat(20)).append("rest -> mince\n");
        sheet.append(longName(19)).append(",single,0.010,0,kg\n");
        try {
            Path file = Files.writeString(folder.resolve("many.cuts"), spec);
            return report(new SpecCompiler().compile(file).orElseThrow().tree(), "many.csv", sheet.toString());
        } catch (IOException full) {
            throw new UncheckedIOException(full);
        }
    }

    private static String longName(int level) {
        String name = "level " + (char) ('a' + level)
                + " of a very deep cut whose Name Goes On Without Any End At All WWWWWWWWWWMMMMMMMMMM ";
        return Stream.iterate(name, each -> each + "xyz ")
                .filter(each -> each.length() > 116)
                .findFirst()
                .orElseThrow()
                .strip();
    }

    private static SheetReport report(CutTree tree, String name, String sheet) {
        return SheetReport.of(WeighSheet.read(new SourceText(name, sheet), tree, Working.AS_WRITTEN)
                .orElseThrow());
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    static Path write(Path folder, String name, List<SheetReport> reports) {
        try {
            return Files.writeString(
                    folder.resolve(name + ".html"), CuttingTestPage.of(reports, List.of("Take care with knives.")));
        } catch (IOException full) {
            throw new UncheckedIOException(full);
        }
    }

    /** What moved from sheet to sheet, those with a mistake not left out. */
    static Path drift(Path folder) {
        List<LabelledTest> tests = allOfMarram().stream()
                .map(report -> new LabelledTest(
                        report.sheet().name(),
                        report.sheet().heading().cutter(),
                        report.sheet().heading().lot(),
                        report.test()))
                .toList();
        String page = DriftPage.of(
                "Drift", List.of("Twelve tests."), Drift.of(tests, new Baseline.AllTests()), List.of("Take care."));
        try {
            return Files.writeString(folder.resolve("drift.html"), page);
        } catch (IOException full) {
            throw new UncheckedIOException(full);
        }
    }
}
