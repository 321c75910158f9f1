package dev.gambrel.yields.working;

import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.Way;
import dev.gambrel.tree.inspection.Findings;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** What a run asks for, found in the tree: for each cut how much goes each of its ways. */
final class Orders {
    private static final TradeName CARCASS = TradeName.of("carcass");
    private static final BigDecimal ALL = BigDecimal.valueOf(100);

    private final Map<TreePath, List<Way>> ways;
    private final List<Diagnostic> found;
    private final Map<TreePath, List<Split>> asked = new HashMap<>();

    private Orders(Map<TreePath, List<Way>> ways, List<Diagnostic> found) {
        this.ways = ways;
        this.found = found;
    }

    /** The orders by the address of their cut, with one split for each of its ways; what is wrong goes to the list. */
    static Map<TreePath, List<Split>> find(List<Order> orders, Map<TreePath, List<Way>> ways, List<Diagnostic> found) {
        Orders finder = new Orders(ways, found);
        orders.forEach(finder::find);
        return finder.asked;
    }

    private void find(Order order) {
        List<TreePath> meant = ways.keySet().stream()
                .filter(path -> endsWith(path, order.cut()))
                .toList();
        if (meant.isEmpty()) {
            List<TradeName> known =
                    ways.keySet().stream().map(Orders::name).distinct().toList();
            Diagnostic finding = Diagnostic.of(WorkingCode.NO_SUCH_CUT, new Place.InTree(TreePath.ROOT, Aspect.NAME))
                    .with("cut", order.cut());
            found.add(Findings.suggest(finding, name(order.cut()), known));
        } else if (meant.size() > 1) {
            found.add(Diagnostic.of(WorkingCode.WHICH_CUT, new Place.InTree(meant.get(0), Aspect.NAME))
                    .with("cut", order.cut())
                    .help("Write the names that lead to it: " + meant.get(0) + ", or " + meant.get(1) + "."));
        } else {
            ask(meant.get(0), order);
        }
    }

    private static boolean endsWith(TreePath path, TreePath end) {
        List<TradeName> names = path.names().isEmpty() ? List.of(CARCASS) : path.names();
        int from = names.size() - end.names().size();
        return from >= 0 && names.subList(from, names.size()).equals(end.names());
    }

    private static TradeName name(TreePath path) {
        return path.names().isEmpty() ? CARCASS : path.names().get(path.names().size() - 1);
    }

    private void ask(TreePath cut, Order order) {
        Place at = new Place.InTree(cut, Aspect.NAME);
        BigDecimal sum = BigDecimal.ZERO;
        boolean plausible = true;
        for (Order.WayShare share : order.ways()) {
            sum = sum.add(share.share().common(), MathContext.DECIMAL128);
            plausible &= share.share().amount().signum() >= 0;
        }
        if (!plausible || sum.compareTo(ALL) != 0) {
            found.add(Diagnostic.of(WorkingCode.MIX_NOT_100, at)
                    .with("cut", name(cut))
                    .with("shares", shares(order))
                    .help("Give each way its share of the pieces, so that they add up to 100 %."));
        }
        List<Split> splits = splits(cut, order, at);
        if (asked.putIfAbsent(cut, splits) != null) {
            found.add(twice(at, name(cut)));
        }
    }

    private static String shares(Order order) {
        return order.ways().stream().map(way -> way.share().toString()).collect(Collectors.joining(" and "));
    }

    private List<Split> splits(TreePath cut, Order order, Place at) {
        List<TradeName> names = ways.get(cut).stream().map(Way::name).toList();
        Map<TradeName, Split> byName = new HashMap<>();
        Set<TradeName> known = new HashSet<>(names);
        for (Order.WayShare share : order.ways()) {
            double part = share.share().value() / 100;
            if (!known.contains(share.way())) {
                Diagnostic finding = Diagnostic.of(WorkingCode.NO_SUCH_WAY, at)
                        .with("cut", name(cut))
                        .with("way", share.way());
                found.add(Findings.suggest(finding, share.way(), names));
            } else if (byName.putIfAbsent(share.way(), new Split(part, part)) != null) {
                found.add(twice(at, share.way()));
            }
        }
        List<Split> splits = new ArrayList<>(names.size());
        names.forEach(name -> splits.add(byName.getOrDefault(name, Split.NONE)));
        return splits;
    }

    static Diagnostic twice(Place at, TradeName of) {
        return Diagnostic.of(WorkingCode.ASKED_TWICE, at).with("of", of).help("Say it once.");
    }
}
