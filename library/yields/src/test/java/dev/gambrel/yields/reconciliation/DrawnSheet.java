package dev.gambrel.yields.reconciliation;

/** A drawn sheet for laws of other packages. */
public final class DrawnSheet {
    private final Sheets sheet;

    private DrawnSheet(Sheets sheet) {
        this.sheet = sheet;
    }

    public static DrawnSheet of(long seed) {
        return new DrawnSheet(Sheets.drawn(seed, 60, 0.95, 0.7));
    }

    /** Some node that was weighed; the first node if none was. */
    public int anyReading(long seed) {
        int[] weighed = sheet.readings().weighed().toArray();
        return weighed.length == 0 ? 0 : weighed[Math.floorMod(seed, weighed.length)];
    }

    /** In balance, one reading so much too heavy. */
    public Reconciliation spoilt(int node, double kilograms) {
        Readings readings = sheet.readings();
        return Reconciliation.of(
                sheet.tree,
                readings.isWeighed(node)
                        ? readings.with(node, readings.weight(node) + kilograms, readings.variance(node))
                        : readings);
    }
}
