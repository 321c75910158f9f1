package dev.gambrel.json.located;

import dev.gambrel.text.Span;
import java.util.List;
import java.util.Map;

/** A JSON value that was read, and where it stands. */
public sealed interface Located {
    /**
     * Its address in the file.
     *
     * @return as in RFC 6901
     */
    Pointer pointer();

    /**
     * Where it stands.
     *
     * @return all its characters
     */
    Span span();

    /**
     * What it is, in a sentence.
     *
     * @return such as "a number"
     */
    String words();

    /**
     * Words in quotation marks.
     *
     * @param pointer its address
     * @param span where it stands
     * @param text what they say
     */
    record Text(Pointer pointer, Span span, String text) implements Located {
        @Override
        public String words() {
            return "text";
        }
    }

    /**
     * A number as written.
     *
     * @param pointer its address
     * @param span where it stands
     * @param digits exactly as in the file
     */
    record Figure(Pointer pointer, Span span, String digits) implements Located {
        @Override
        public String words() {
            return "a number";
        }
    }

    /**
     * One of JSON's own words: true, false or null.
     *
     * @param pointer its address
     * @param span where it stands
     * @param word the word
     */
    record Literal(Pointer pointer, Span span, String word) implements Located {
        @Override
        public String words() {
            return "the word " + word;
        }
    }

    /**
     * A list.
     *
     * @param pointer its address
     * @param span where it stands
     * @param items in the order written
     */
    record Items(Pointer pointer, Span span, List<Located> items) implements Located {
        @Override
        public String words() {
            return "a list";
        }
    }

    /**
     * An object with its fields in the order written.
     *
     * @param pointer its address
     * @param span where it stands
     * @param fields by name
     */
    record Fields(Pointer pointer, Span span, Map<String, Field> fields) implements Located {
        @Override
        public String words() {
            return "an object";
        }
    }

    /**
     * A field of an object.
     *
     * @param name where its name stands
     * @param value what it says
     */
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

        /**
         * A field of an object, or an item of a list counted from 0.
         *
         * @param above the address of the object or the list
         * @param step the name or the number
         */
        record Step(Pointer above, String step) implements Pointer {
            @Override
            public String toString() {
                String escaped = step.replace("~", "~0").replace("/", "~1");
                return (above instanceof Root ? "" : above.toString()) + "/" + escaped;
            }
        }

        /**
         * The address of a field.
         *
         * @param field its name
         * @return the address
         */
        default Pointer then(String field) {
            return new Step(this, field);
        }

        /**
         * The address of an item.
         *
         * @param item counted from 0
         * @return the address
         */
        default Pointer then(int item) {
            return new Step(this, Integer.toString(item));
        }
    }
}
