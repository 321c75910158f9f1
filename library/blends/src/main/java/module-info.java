/** Blending tubs of trim to a lean target: the square, the largest batch, the least cost. */
module dev.gambrel.blends {
    requires transitive dev.gambrel.yields;
    requires org.apache.commons.statistics.distribution;
    requires ojalgo;

    exports dev.gambrel.blends;
    exports dev.gambrel.blends.solver;
}
