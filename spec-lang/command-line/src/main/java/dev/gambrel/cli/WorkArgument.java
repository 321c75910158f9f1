package dev.gambrel.cli;

import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.text.TradeName;
import dev.gambrel.yields.working.Order;
import dev.gambrel.yields.working.Working;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a run asks for on the command line: "topside = whole joint", "topside = steaks 50 %, whole joint 50 %",
 * "season = winter".
 */
final class WorkArgument {
    private static final Pattern SHARED = Pattern.compile("(.+?)\\s+([0-9]{1,3}(?:\\.[0-9]{1,20})?)\\s*%");

    private final String written;
    private final String form;

    private WorkArgument(String written, String form) {
        this.written = written;
        this.form = form;
    }

    static Order order(String written) {
        return new WorkArgument(written, "topside = steaks\" or \"topside = steaks 50 %, whole joint 50 %").order();
    }

    static Working.Given given(String written) {
        WorkArgument argument = new WorkArgument(written, "season = winter");
        String[] sides = argument.sides();
        return new Working.Given(argument.name(sides[0]), argument.name(sides[1]));
    }

    private Order order() {
        String[] sides = sides();
        List<TradeName> cut = new ArrayList<>();
        for (String name : sides[0].split("/", -1)) {
            cut.add(name(name));
        }
        String[] ways = sides[1].split(",", -1);
        List<Order.WayShare> mix = new ArrayList<>();
        for (String way : ways) {
            mix.add(way(way.strip(), ways.length == 1));
        }
        return new Order(new TreePath(cut), mix);
    }

    /** One way alone may be without a share: it is all of it. */
    private Order.WayShare way(String way, boolean isAlone) {
        Matcher shared = SHARED.matcher(way);
        if (shared.matches()) {
            return new Order.WayShare(
                    name(shared.group(1)), new Quantity(new BigDecimal(shared.group(2)), Unit.PERCENT));
        } else if (isAlone) {
            return new Order.WayShare(name(way), Quantity.of("100", Unit.PERCENT));
        }
        throw wrong();
    }

    private String[] sides() {
        String[] sides = written.split("=", -1);
        if (sides.length != 2) {
            throw wrong();
        }
        return sides;
    }

    private TradeName name(String text) {
        String name = text.strip();
        if (name.isEmpty() || !TradeName.isAcceptable(name)) {
            throw wrong();
        }
        return TradeName.of(name);
    }

    private WrongUsage wrong() {
        return new WrongUsage("“" + written + "” cannot be read; write it such as \"" + form + "\".");
    }
}
