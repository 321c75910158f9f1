package dev.gambrel.compiler.meaning;

import dev.gambrel.compiler.code.MeaningCode;
import dev.gambrel.compiler.parse.FileReport;
import dev.gambrel.compiler.syntax.RevisionClause;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.time.format.ResolverStyle;
import java.util.Locale;
import java.util.Optional;

/** Days of the calendar, written 2026-10-01 or 1 October 2026. */
public final class Dates {
    private static final DateTimeFormatter IN_FIGURES =
            DateTimeFormatter.ofPattern("uuuu-MM-dd", Locale.ROOT).withResolverStyle(ResolverStyle.STRICT);
    private static final DateTimeFormatter WITH_THE_MONTH = new DateTimeFormatterBuilder()
            .parseCaseInsensitive()
            .appendPattern("d MMMM uuuu")
            .toFormatter(Locale.ENGLISH)
            .withResolverStyle(ResolverStyle.STRICT);

    private Dates() {}

    /** The day of a clause; nothing, after a finding, if there is no such day. */
    public static Optional<LocalDate> read(RevisionClause.InForce written, FileReport report) {
        String date = written.date().strip().replaceAll("\\s+", " ").replaceAll("[–−]", "-");
        try {
            return Optional.of(LocalDate.parse(date, date.indexOf('-') > 0 ? IN_FIGURES : WITH_THE_MONTH));
        } catch (DateTimeException none) {
            report.add(report.finding(MeaningCode.NOT_A_DATE, written.span())
                    .with("found", date)
                    .help("Write the day as 2026-10-01 or as 1 October 2026."));
            return Optional.empty();
        }
    }
}
