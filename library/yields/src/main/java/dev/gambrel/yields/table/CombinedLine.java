package dev.gambrel.yields.table;

import dev.gambrel.yields.Doubt;
import dev.gambrel.yields.figure.CombinedEstimate;
import dev.gambrel.yields.figure.Spread;

/**
 * One printed line of several carcasses together, every figure already rounded.
 *
 * @param level how deep to set it
 * @param name what it is
 * @param path its address; empty for totals
 * @param pieces how many; empty for totals
 * @param all the weight from all carcasses
 * @param spreads how far it strays
 * @param goesTo where it goes
 */
record CombinedLine(int level, String name, String path, String pieces, String all, Spreads spreads, String goesTo) {
    /**
     * @param between one standard deviation between carcasses
     * @param doubt one standard deviation of the doubt about the means
     * @param both one standard deviation of both, and the range
     */
    record Spreads(String between, String doubt, Line.Spreading both) {
        static final Spreads UNKNOWN = new Spreads(Line.NOT_STATED, Line.NOT_STATED, Line.Spreading.UNKNOWN);

        /** Where nothing is said of the doubt the range is that between carcasses alone. */
        static Spreads of(CombinedEstimate weight, Doubt doubt, Figures figures) {
            Line.Spreading both = figures.spreading(weight.whole());
            if (doubt instanceof Doubt.NotSaid) {
                Line.Spreading alone = figures.spreading(weight.betweenAlone());
                both = new Line.Spreading(both.sd(), alone.low(), alone.high());
            }
            return new Spreads(shown(weight.between(), figures), shown(weight.doubt(), figures), both);
        }

        private static String shown(Spread spread, Figures figures) {
            return spread instanceof Spread.Stated stated ? figures.finer(stated.standardDeviation()) : Line.NOT_STATED;
        }
    }
}
