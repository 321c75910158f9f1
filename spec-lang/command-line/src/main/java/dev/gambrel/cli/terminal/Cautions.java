package dev.gambrel.cli.terminal;

/** What must be said wherever somebody may take up a knife with a printed sheet in hand. */
public final class Cautions {
    /** Lines, each ended by a line feed. */
    public static final String TEXT = """
            Take care: glove and gauntlet on the hand that holds, apron where the blade comes in, guards on the saw.
            Keep meat cold; take out spinal cord and other risk material, and cut wide of a shot channel.
            Local law and licensed practice on these, on labels and on allergens come before this sheet.
            """;

    private Cautions() {}
}
