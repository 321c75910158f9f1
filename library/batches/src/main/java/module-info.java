/** Files of carcasses worked out one after another, in bounded memory. */
module dev.gambrel.batches {
    requires transitive dev.gambrel.yields;
    requires dev.gambrel.json;

    exports dev.gambrel.batches;
    exports dev.gambrel.batches.sheets;
}
