package dev.gambrel.cli.blend;

import dev.gambrel.blends.BatchOrder;
import dev.gambrel.blends.Blend;
import dev.gambrel.blends.CheapestBatch;
import dev.gambrel.blends.LargestBatch;
import dev.gambrel.blends.LeanTarget;
import dev.gambrel.blends.Missing;
import dev.gambrel.blends.PointOfLean;
import dev.gambrel.blends.Promise;
import dev.gambrel.blends.Taken;
import dev.gambrel.blends.Tub;
import dev.gambrel.blends.Tubs;
import dev.gambrel.diagnostic.Visible;
import dev.gambrel.quantity.Unit;
import dev.gambrel.yields.figure.Estimate;
import dev.gambrel.yields.figure.Spread;
import dev.gambrel.yields.table.LargestRemainder;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;

/** A blend in print: what of each tub goes in, and what is left. Printed weights add up. */
record BlendText(Tubs tubs, LeanTarget target, StreamTubs streams, Unit unit, int decimals) {
    private static final String NOTES = """
            Printed weights add up: they are rounded by largest remainder. Lean is the mean of the tubs by weight; ± is one
            standard deviation, the tubs taken as straying independently. Whole boxes are not looked at.
            Before lean or fat goes on a label, have the blend analysed: local codes and licensed practice decide what a label
            may say. Lean by eye is no analysis. Keep meat cold while it is blended.
            """;

    String largest(LargestBatch found) {
        StringBuilder out = new StringBuilder("The largest batch of " + target.words() + "\n\n");
        table(found.batch(), out);
        missing(found.missing(), out);
        return end(out);
    }

    String cheapest(CheapestBatch found, BatchOrder order) {
        boolean priced = found.blend().cost().isPresent();
        StringBuilder out =
                new StringBuilder(priced ? "The cheapest batch of " : "The batch that spares the leanest meat, of ");
        out.append(target.words());
        if (order.promise() instanceof Promise.At at) {
            out.append(", in ").append(asSure(at.chance())).append(" of 100 batches");
        }
        out.append("\n\n");
        table(found.blend(), out);
        if (priced || !order.limits().isEmpty()) {
            out.append('\n');
        }
        order.limits()
                .forEach(limit ->
                        out.append("Kept: ").append(Visible.text(limit.words())).append('\n'));
        cost(found, out);
        return end(out);
    }

    private String end(StringBuilder out) {
        streams.gives().forEach(each -> out.append(Visible.text(each)).append('\n'));
        streams.leftOut()
                .forEach(each ->
                        out.append("Left out: ").append(Visible.text(each)).append('\n'));
        return out.append('\n').append(NOTES).toString();
    }

    private void table(Blend blend, StringBuilder out) {
        List<Tub> all = tubs.all();
        long there = Math.round(steps(tubs.kilograms()));
        long[] stock = LargestRemainder.apportion(
                all.stream().mapToDouble(tub -> steps(tub.kilograms())).toArray(), there);
        long batch = Math.min(there, Math.round(steps(blend.kilograms())));
        long[] taken = LargestRemainder.apportion(
                all.stream().mapToDouble(tub -> steps(taken(blend, tub))).toArray(), batch);
        String symbol = ", " + unit.symbol();
        Columns columns =
                new Columns("tub", "there" + symbol, "lean, %", "± points", "taken" + symbol, "left" + symbol);
        for (int i = 0; i < all.size(); i++) {
            Estimate lean = all.get(i).lean().percent();
            columns.add(
                    Visible.text(all.get(i).name().text()),
                    shown(stock[i]),
                    figure(lean.mean(), 2),
                    spread(lean),
                    shown(taken[i]),
                    shown(stock[i] - taken[i]));
        }
        columns.add(
                "all",
                shown(there),
                figure(blend.lean().mean(), 2),
                spread(blend.lean()),
                shown(batch),
                shown(there - batch));
        out.append(columns.text());
        out.append("The lean of all is that of what is taken.\n");
    }

    private static double taken(Blend blend, Tub tub) {
        return blend.taken().stream()
                .filter(each -> each.tub().equals(tub))
                .mapToDouble(Taken::kilograms)
                .sum();
    }

    private void missing(Missing missing, StringBuilder out) {
        out.append('\n');
        if (missing.isNothing()) {
            out.append("All of it goes in.\n");
            return;
        }
        boolean leaner = missing.points() > 0;
        double end = leaner ? 100 : 0;
        String wanted = DoubleStream.of(end, (end + missing.edge()) / 2, (end + 3 * missing.edge()) / 4)
                .map(Math::rint)
                .distinct()
                .filter(percent -> missing.kilogramsOf(percent).isPresent())
                .mapToObj(percent -> wanted(missing.kilogramsOf(percent).orElseThrow(), percent))
                .collect(Collectors.joining(", or\n  "));
        out.append("What would use up the rest as well, being ")
                .append(leaner ? "leaner" : "fatter")
                .append(":\n  ")
                .append(wanted)
                .append(".\n");
    }

    private String wanted(double kilograms, double percent) {
        return shown(Math.round(steps(kilograms))) + " " + unit.symbol() + " that is " + figure(percent, 0) + " % lean";
    }

    private void cost(CheapestBatch found, StringBuilder out) {
        found.blend().cost().ifPresent(cost -> {
            double perUnit = cost / found.blend().kilograms() * unit.factor().doubleValue();
            out.append("It costs ")
                    .append(money(cost, 2))
                    .append(", ")
                    .append(money(perUnit, 4))
                    .append(" a ")
                    .append(unit.symbol())
                    .append(".\n");
            out.append("A target one point leaner ")
                    .append(point(found.leaner()))
                    .append('\n');
            out.append("A target one point fatter ")
                    .append(point(found.fatter()))
                    .append('\n');
        });
    }

    private String point(PointOfLean point) {
        if (!(point instanceof PointOfLean.Costs costs)) {
            return "cannot be met.";
        }
        double money = costs.money() * unit.factor().doubleValue();
        return "costs " + money(Math.abs(money), 4) + " a " + unit.symbol() + (money < 0 ? " less." : " more.");
    }

    private double steps(double kilograms) {
        return kilograms / unit.factor().doubleValue() * Math.pow(10, decimals);
    }

    private String shown(long steps) {
        return BigDecimal.valueOf(steps, decimals).toPlainString();
    }

    private static String spread(Estimate lean) {
        return lean.spread() instanceof Spread.Stated s ? figure(s.standardDeviation(), 2) : "not stated";
    }

    private static String money(double money, int places) {
        return figure(money, places);
    }

    /** As it was asked for: never rounded to a certainty that is not there. */
    private static String asSure(double chance) {
        BigDecimal written =
                new BigDecimal(100 * chance).round(new MathContext(14)).stripTrailingZeros();
        return written.setScale(Math.max(0, written.scale())).toPlainString();
    }

    private static String figure(double value, int places) {
        return BigDecimal.valueOf(value)
                .setScale(places, RoundingMode.HALF_EVEN)
                .toPlainString();
    }
}
