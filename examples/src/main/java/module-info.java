/** Small programs that embed the library, as a module: they see only what is meant to be public. */
module dev.gambrel.examples {
    requires dev.gambrel.batches;
    requires dev.gambrel.blends;
    requires dev.gambrel.compiler;
    requires dev.gambrel.json;
    requires dev.gambrel.reports;
    requires dev.gambrel.yields;
}
