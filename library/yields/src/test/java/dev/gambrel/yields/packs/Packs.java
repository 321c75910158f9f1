package dev.gambrel.yields.packs;

import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** Samples of packs that have a given mean. */
final class Packs {
    private Packs() {}

    static Quantity grams(String amount) {
        return Quantity.of(amount, Unit.GRAM);
    }

    static WeighedPacks weighing(String... grams) {
        return new WeighedPacks(List.of(grams).stream().map(Packs::grams).toList());
    }

    /** So many packs with so many light ones among them, whose mean is exact: the heavier ones make up for it. */
    static WeighedPacks of(int packs, String mean, int light, String lightWeight) {
        List<Quantity> net = new ArrayList<>();
        BigDecimal left = new BigDecimal(mean).multiply(BigDecimal.valueOf(packs));
        for (int i = 0; i < light; i++) {
            net.add(grams(lightWeight));
            left = left.subtract(new BigDecimal(lightWeight));
        }
        BigDecimal each = left.divide(BigDecimal.valueOf(packs - (long) light), 3, java.math.RoundingMode.DOWN);
        for (int i = light; i < packs - 1; i++) {
            net.add(new Quantity(each, Unit.GRAM));
            left = left.subtract(each);
        }
        net.add(new Quantity(left, Unit.GRAM));
        return new WeighedPacks(net);
    }
}
