package dev.gambrel.references.gs1;

/** A stranger's text in a sentence of ours. */
final class Shown {
    private static final int LONGEST = 40;

    private Shown() {}

    static String shortened(String text) {
        return text.length() <= LONGEST ? text : text.substring(0, LONGEST) + "…";
    }
}
