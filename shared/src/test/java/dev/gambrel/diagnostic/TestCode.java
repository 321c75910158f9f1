package dev.gambrel.diagnostic;

/** Kinds of finding for tests, one of each severity. */
enum TestCode implements Code {
    SUM_NOT_100(Severity.ERROR, "The parts of the {cut} add up to {sum}."),
    LONE_SPREAD(Severity.WARNING, "Only for the {part} is a spread written."),
    BY_HAND(Severity.NOTE, "Cut by hand.");

    private final Severity severity;
    private final String pattern;

    TestCode(Severity severity, String pattern) {
        this.severity = severity;
        this.pattern = pattern;
    }

    @Override
    public String id() {
        return "T000" + ordinal();
    }

    @Override
    public String slug() {
        return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
    }

    @Override
    public Severity severity() {
        return severity;
    }

    @Override
    public String pattern() {
        return pattern;
    }
}
