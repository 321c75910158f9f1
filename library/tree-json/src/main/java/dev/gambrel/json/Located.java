package dev.gambrel.json;

import dev.gambrel.text.Span;
import java.util.List;
import java.util.Map;

/** A JSON value that was read, and where it stands. */
sealed interface Located {
    Pointer pointer();

    Span span();

    /** What it is, in a sentence. */
    String words();

    /** Words in quotation marks. */
    record Text(Pointer pointer, Span span, String text) implements Located {
        @Override
        public String words() {
            return "text";
        }
    }

    /** A number as written. */
    record Figure(Pointer pointer, Span span, String digits) implements Located {
        @Override
        public String words() {
            return "a number";
        }
    }

    /** One of JSON's own words: true, false or null. */
    record Literal(Pointer pointer, Span span, String word) implements Located {
        @Override
        public String words() {
            return "the word " + word;
        }
    }

    /** A list. */
    record Items(Pointer pointer, Span span, List<Located> items) implements Located {
        @Override
        public String words() {
            return "a list";
        }
    }

    /** An object with its fields in the order written. */
    record Fields(Pointer pointer, Span span, Map<String, Field> fields) implements Located {
        @Override
        public String words() {
            return "an object";
        }
    }

    /** A field: where its name stands, and its value. */
    record Field(Span name, Located value) {}

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
}
