package dev.gambrel.cli.verb;

/** The program was called in a way that it does not know; the message says how, in a full sentence. */
public final class WrongUsage extends RuntimeException {
    private static final long serialVersionUID = 1L;

    /**
     * Wrong usage.
     *
     * @param message what is wrong and what is right, in a full sentence
     */
    public WrongUsage(String message) {
        super(message);
    }
}
