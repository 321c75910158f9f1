package dev.gambrel.benchmarks;

/**
 * What a careful programmer writes for one sheet and no other: two loops over flat arrays. What is compared with it does the
 * same work.
 */
final class HandLoop {
    private final double[] share;
    private final double[] ofTop;
    private final int[] top;

    HandLoop(FlatSheet sheet) {
        this.share = sheet.ofCarcass();
        this.ofTop = sheet.ofTop();
        this.top = sheet.top();
    }

    /** Adds each line's weight of all carcasses, each weight worked out for each carcass. */
    void totals(double[] kilograms, double[] totals) {
        for (double w : kilograms) {
            for (int v = 0; v < share.length; v++) {
                totals[v] += w * share[v];
            }
        }
    }

    /** Keeps each line's weight of each carcass. */
    void keep(double[] kilograms, double[] weights) {
        int at = 0;
        for (double w : kilograms) {
            for (int v = 0; v < share.length; v++) {
                weights[at + v] = w * share[v];
            }
            at += share.length;
        }
    }

    /** As {@link #totals} where what the carcass is divided into differs from carcass to carcass. */
    void totals(DrawnCarcasses carcasses, double[] totals) {
        double[] part = new double[top.length - 1];
        for (int r = 0; r < carcasses.count(); r++) {
            totals[0] += carcasses.kilograms()[r];
            divide(carcasses.kilograms()[r], carcasses.backFat()[r], part);
            for (int t = 0; t < part.length; t++) {
                for (int v = top[t]; v < top[t + 1]; v++) {
                    totals[v] += part[t] * ofTop[v];
                }
            }
        }
    }

    /** As {@link #keep} where what the carcass is divided into differs from carcass to carcass. */
    void keep(DrawnCarcasses carcasses, double[] weights) {
        double[] part = new double[top.length - 1];
        int at = 0;
        for (int r = 0; r < carcasses.count(); r++) {
            weights[at] = carcasses.kilograms()[r];
            divide(carcasses.kilograms()[r], carcasses.backFat()[r], part);
            for (int t = 0; t < part.length; t++) {
                for (int v = top[t]; v < top[t + 1]; v++) {
                    weights[at + v] = part[t] * ofTop[v];
                }
            }
            at += share.length;
        }
    }

    /** In the order of the sheet: spinal cord, what is left, saw dust, leg, loin, shoulder, breast, neck. */
    private void divide(double kilograms, double backFat, double[] part) {
        double left = 1;
        for (int t = 0; t < part.length; t++) {
            double s = share(t, backFat);
            part[t] = kilograms * s;
            left -= t == EstimatedSheet.REST ? 0 : s;
        }
        part[EstimatedSheet.REST] = kilograms * left;
    }

    private double share(int t, double backFat) {
        return switch (t) {
            case EstimatedSheet.REST -> 0;
            case EstimatedSheet.LEG -> 0.215 - 0.0015 * backFat;
            case EstimatedSheet.LOIN -> 0.188 + 0.0010 * backFat;
            case EstimatedSheet.SHOULDER -> 0.200 - 0.0005 * backFat;
            default -> share[top[t]];
        };
    }
}
