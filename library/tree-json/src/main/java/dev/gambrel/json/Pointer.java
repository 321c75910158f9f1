package dev.gambrel.json;

/** The address of a value in a JSON file (RFC 6901), shared with the values around it so that depth costs nothing. */
sealed interface Pointer {
    /** The whole file. */
    record Root() implements Pointer {
        @Override
        public String toString() {
            return "the top of the file";
        }
    }

    /** A field of an object, or an item of a list counted from 0. */
    record Step(Pointer above, String step) implements Pointer {
        @Override
        public String toString() {
            String escaped = step.replace("~", "~0").replace("/", "~1");
            return (above instanceof Root ? "" : above.toString()) + "/" + escaped;
        }
    }

    default Pointer then(String field) {
        return new Step(this, field);
    }

    default Pointer then(int item) {
        return new Step(this, Integer.toString(item));
    }
}
