package dev.gambrel.blends;

/** A promise over so many tubs that cutting planes do not come to an end in good time. */
final class CutsWithoutEnd extends RuntimeException {
    private static final long serialVersionUID = 1L;

    CutsWithoutEnd() {
        super("the cuts do not come to an end");
    }
}
