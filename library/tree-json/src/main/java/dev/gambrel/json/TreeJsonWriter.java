package dev.gambrel.json;

import dev.gambrel.json.writing.TreeWriter;
import dev.gambrel.tree.CutTree;

/** Writes a cut tree as canonical JSON: equal trees give equal text. */
public final class TreeJsonWriter {
    /** What the field "format" says. */
    public static final String FORMAT = "gambrel cut tree";

    /** The version that is written, and the only one that is read. */
    public static final int VERSION = 1;

    private TreeJsonWriter() {}

    /**
     * The tree as JSON.
     *
     * <p>Declared order is kept, what is not stated is left out, and decimals are written in full as they stand: 33.0
     * stays 33.0. A decimal of negative scale (1E+3) is written out (1000) and is read back as that. The text is meant
     * for UTF-8. Costs O(length of the text).
     *
     * @param tree any tree, whether or not it keeps the rules
     * @return the text, ending in a line feed
     */
    public static String write(CutTree tree) {
        return TreeWriter.write(FORMAT, VERSION, tree);
    }
}
