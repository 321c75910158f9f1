package dev.gambrel.diagnostic;

import java.util.Locale;

/** Kinds of finding for tests, one of each severity. */
enum TestCode implements Code {
    SUM_NOT_100(Severity.ERROR, "The parts of the {cut} add up to {sum}."),
    LONE_SPREAD(Severity.WARNING, "Only for the {part} is a spread written."),
    BY_HAND(Severity.NOTE, "Cut by hand.");

    private final Kind kind;

    TestCode(Severity severity, String pattern) {
        String slug = name().toLowerCase(Locale.ROOT).replace('_', '-');
        this.kind = new Kind("T000" + ordinal(), slug, severity, pattern);
    }

    @Override
    public Kind kind() {
        return kind;
    }
}
