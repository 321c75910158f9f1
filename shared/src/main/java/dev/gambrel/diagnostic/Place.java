package dev.gambrel.diagnostic;

import dev.gambrel.text.SourceText;
import dev.gambrel.text.Span;

/** Where a finding is. */
public sealed interface Place {
    /**
     * In a text.
     *
     * @param text the text
     * @param span the characters to underline
     */
    record InText(SourceText text, Span span) implements Place {}

    /**
     * In a cut tree that may have been made without text.
     *
     * @param path the part
     * @param aspect what about the part
     * @param index which one where a part has several of that aspect, counted from 0
     */
    record InTree(TreePath path, Aspect aspect, int index) implements Place {
        /**
         * The first or only one of an aspect.
         *
         * @param path the part
         * @param aspect what about it
         */
        public InTree(TreePath path, Aspect aspect) {
            this(path, aspect, 0);
        }
    }

    /**
     * In a cut tree, and written down somewhere.
     *
     * @param tree the part
     * @param text where it is written
     */
    record Written(InTree tree, InText text) implements Place {}

    /**
     * In a file as a whole.
     *
     * @param name the file's name for people
     */
    record InFile(String name) implements Place {}
}
