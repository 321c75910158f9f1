package dev.gambrel.cli;

/** The program was called in a way that it does not know; the message says how, in a full sentence. */
final class WrongUsage extends RuntimeException {
    private static final long serialVersionUID = 1L;

    WrongUsage(String message) {
        super(message);
    }
}
