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
}
