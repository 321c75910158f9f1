package dev.gambrel.references.gs1;

import java.time.LocalDate;
import java.util.Optional;

/**
 * A date of six digits, YYMMDD, whose century is told by the year in which it is read.
 *
 * <p>Rule of the century, from memory of the GS1 General Specifications, section 7.12: where the two digits lie 51 or more above those of
 * the year of reading the date is of the century before; where they lie 50 or more below, of the century after; else of the same.
 * Day 00 leaves the day open; that the last day of the month is then meant is from memory too.
 *
 * @param year 0 to 99
 * @param month 1 to 12
 * @param day 1 to 31, or 0 where it is left open
 */
public record Gs1Date(int year, int month, int day) {
    private static final int CENTURY = 100;
    private static final int ABOVE = 51;
    private static final int BELOW = -50;
    /** 29 February is let through; whether the year has it is seen once its century is known. */
    private static final int[] LONGEST = {31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};

    /**
     * Checks month and day.
     *
     * @throws IllegalArgumentException if no year of those digits has the day
     */
    public Gs1Date {
        boolean isDay = month >= 1 && month <= LONGEST.length && day >= 0 && day <= LONGEST[month - 1];
        if (year < 0 || year >= CENTURY || !isDay || month == 2 && day == LONGEST[1] && year % 4 != 0) {
            throw new IllegalArgumentException("no such day");
        }
    }

    /**
     * Reads a date.
     *
     * @param digits six digits
     * @return the date, or nothing if there is no such day
     */
    public static Optional<Gs1Date> of(String digits) {
        if (!digits.matches("[0-9]{6}")) {
            return Optional.empty();
        }
        try {
            return Optional.of(new Gs1Date(part(digits, 0), part(digits, 2), part(digits, 4)));
        } catch (IllegalArgumentException noDay) {
            return Optional.empty();
        }
    }

    private static int part(String digits, int at) {
        return Integer.parseInt(digits.substring(at, at + 2));
    }

    /**
     * The year in full.
     *
     * @param reading the year in which it is read, such as 2026
     * @return the year that the two digits mean then
     */
    public int fullYear(int reading) {
        int gap = year - Math.floorMod(reading, CENTURY);
        int century = Math.floorDiv(reading, CENTURY) * CENTURY;
        if (gap >= ABOVE) {
            return century - CENTURY + year;
        }
        return gap <= BELOW ? century + CENTURY + year : century + year;
    }

    /**
     * The day in full; where the day is left open the last of the month.
     *
     * @param reading the year in which it is read
     * @return the day, or nothing for 29 February of a year that has none
     */
    public Optional<LocalDate> in(int reading) {
        int full = fullYear(reading);
        int last = LocalDate.of(full, month, 1).lengthOfMonth();
        return day > last ? Optional.empty() : Optional.of(LocalDate.of(full, month, day == 0 ? last : day));
    }

    /**
     * Whether the day is left open.
     *
     * @return true for day 00
     */
    public boolean isMonth() {
        return day == 0;
    }

    /** As on labels without a century: 26-11-30, or 26-11 where the day is left open. */
    @Override
    public String toString() {
        return two(year) + "-" + two(month) + (isMonth() ? "" : "-" + two(day));
    }

    private static String two(int number) {
        return (number < 10 ? "0" : "") + number;
    }
}
