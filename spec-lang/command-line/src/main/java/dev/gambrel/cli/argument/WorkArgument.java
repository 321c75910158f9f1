package dev.gambrel.cli.argument;

import dev.gambrel.cli.verb.WrongUsage;
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
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;

/**
 * What a run asks for on the command line: "topside = whole joint", "topside = steaks 50 %, whole joint 50 %",
 * "season = winter".
 */
public final class WorkArgument {
    private static final String WORK = "--work";
    private static final String GIVEN = "--given";
    private static final Pattern SHARED = Pattern.compile("(.+?)\\s+([0-9]{1,3}(?:\\.[0-9]{1,20})?)\\s*%");

    private final String written;
    private final String form;

    private WorkArgument(String written, String form) {
        this.written = written;
        this.form = form;
    }

    /**
     * Takes how cuts are worked, and what is known of the carcass.
     *
     * @return the options
     */
    public static List<OptionSpec> options() {
        return List.of(
                option(
                        WORK,
                        "CUT = WAY",
                        "How a cut is worked in this run, such as \"topside = whole joint\" or"
                                + " \"topside = steaks 50 %%, whole joint 50 %%\"; may be given for several cuts."),
                option(
                        GIVEN,
                        "GRADE = VALUE",
                        "What is known of the carcass, such as \"season = winter\"; may be given for several grades."));
    }

    private static OptionSpec option(String name, String label, String description) {
        return OptionSpec.builder(name)
                .paramLabel(label)
                .type(List.class)
                .auxiliaryTypes(String.class)
                .arity("1")
                .description(description)
                .build();
    }

    /**
     * All that the run asks for.
     *
     * @param parsed what stands on the command line
     * @return orders and what is known, in the order in which they were written
     * @throws WrongUsage if one cannot be read
     */
    public static Working working(ParseResult parsed) {
        List<String> work = parsed.matchedOptionValue(WORK, List.of());
        List<String> given = parsed.matchedOptionValue(GIVEN, List.of());
        return new Working(
                work.stream().map(WorkArgument::order).toList(),
                given.stream().map(WorkArgument::given).toList());
    }

    static Order order(String written) {
        return new WorkArgument(written, "topside = steaks\" or \"topside = steaks 50 %, whole joint 50 %").order();
    }

    private static Working.Given given(String written) {
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
