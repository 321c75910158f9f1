package dev.gambrel.blends.solver;

/** A solver neither found a plan nor showed that there is none, as may happen where figures lie very far apart. */
public final class NoAnswer extends RuntimeException {
    private static final long serialVersionUID = 1L;

    /**
     * Tells why.
     *
     * @param message what the solver did
     */
    public NoAnswer(String message) {
        super(message);
    }
}
