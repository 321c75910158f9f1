/** The immutable cut tree, and the rules that any tree must keep, however it was made. */
module dev.gambrel.tree {
    requires transitive dev.gambrel.shared;

    exports dev.gambrel.tree;
    exports dev.gambrel.tree.allowance;
    exports dev.gambrel.tree.anatomy;
    exports dev.gambrel.tree.bench;
    exports dev.gambrel.tree.choice;
    exports dev.gambrel.tree.estimate;
    exports dev.gambrel.tree.inspection;
    exports dev.gambrel.tree.portion;
    exports dev.gambrel.tree.rules;
    exports dev.gambrel.tree.term;
}
