/** The cut tree as versioned JSON, and back. */
module dev.gambrel.json {
    requires transitive dev.gambrel.tree;
    requires com.fasterxml.jackson.core;

    exports dev.gambrel.json;
    exports dev.gambrel.json.located;
}
