package dev.gambrel.batches.sheets;

import dev.gambrel.yields.drift.LabelledTest;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * Sheets in the order of time.
 *
 * @param sheets the first test first; those of one day as they were given
 * @param isByDate whether every sheet has a date as ISO 8601 writes it, such as 2026-03-02. Otherwise they are left as they were given
 */
public record SheetOrder(List<SheetReport> sheets, boolean isByDate) {
    /** Copies the list. */
    public SheetOrder {
        sheets = List.copyOf(sheets);
    }

    /**
     * Puts sheets in order.
     *
     * @param given in any order
     * @return by their dates, where all have one that can be read
     */
    public static SheetOrder of(List<SheetReport> given) {
        boolean isByDate = given.stream().allMatch(report -> date(report).isPresent());
        Function<SheetReport, LocalDate> date = report -> date(report).orElseThrow();
        return isByDate
                ? new SheetOrder(
                        given.stream().sorted(Comparator.comparing(date)).toList(), true)
                : new SheetOrder(given, false);
    }

    /**
     * The sheets as tests that may be charted.
     *
     * @return each by the name of its file and its date, with its cutter and its lot
     */
    public List<LabelledTest> tests() {
        return sheets.stream().map(SheetOrder::test).toList();
    }

    private static LabelledTest test(SheetReport report) {
        SheetHeading heading = report.sheet().heading();
        String name = report.sheet().name();
        return new LabelledTest(
                heading.date().isEmpty() ? name : name + " (" + heading.date() + ")",
                heading.cutter(),
                heading.lot(),
                report.test());
    }

    private static Optional<LocalDate> date(SheetReport report) {
        try {
            return Optional.of(LocalDate.parse(report.sheet().heading().date()));
        } catch (DateTimeParseException e) {
            return Optional.empty();
        }
    }
}
