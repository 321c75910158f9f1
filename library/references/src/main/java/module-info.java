/** Published numbers of cuts, their weight ranges, and the codes on labels that carry them. */
module dev.gambrel.references {
    requires transitive dev.gambrel.shared;

    exports dev.gambrel.references.claims;
    exports dev.gambrel.references.code;
    exports dev.gambrel.references.gs1;
    exports dev.gambrel.references.item;
    exports dev.gambrel.references.ranges;
    exports dev.gambrel.references.source;
    exports dev.gambrel.references.unece;
}
