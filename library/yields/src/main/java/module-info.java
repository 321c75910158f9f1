/** What a carcass should give: expected weights with their spread, streams, portions. */
module dev.gambrel.yields {
    requires dev.gambrel.references;
    requires transitive dev.gambrel.tree;
    requires org.apache.commons.numbers.gamma;
    requires java.xml;
    requires org.apache.commons.statistics.distribution;

    exports dev.gambrel.yields;
    exports dev.gambrel.yields.batch;
    exports dev.gambrel.yields.comparison;
    exports dev.gambrel.yields.composition;
    exports dev.gambrel.yields.conformance;
    exports dev.gambrel.yields.conformance.clause;
    exports dev.gambrel.yields.conformance.number;
    exports dev.gambrel.yields.conformance.report;
    exports dev.gambrel.yields.control;
    exports dev.gambrel.yields.cuttingtest;
    exports dev.gambrel.yields.cuttingtest.wording;
    exports dev.gambrel.yields.drift;
    exports dev.gambrel.yields.estimate;
    exports dev.gambrel.yields.figure;
    exports dev.gambrel.yields.houseshares;
    exports dev.gambrel.yields.lean;
    exports dev.gambrel.yields.packs;
    exports dev.gambrel.yields.packs.planning;
    exports dev.gambrel.yields.packs.rule;
    exports dev.gambrel.yields.plan;
    exports dev.gambrel.yields.portions;
    exports dev.gambrel.yields.reconciliation;
    exports dev.gambrel.yields.reconciliation.error;
    exports dev.gambrel.yields.reconciliation.pattern;
    exports dev.gambrel.yields.table;
    exports dev.gambrel.yields.testedcuts;
    exports dev.gambrel.yields.working;
}
