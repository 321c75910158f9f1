package dev.gambrel.batches.sheets;

import dev.gambrel.batches.sheets.SheetRow.Cell;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.text.NearestName;
import dev.gambrel.text.TradeName;
import dev.gambrel.yields.cuttingtest.PartReading.State;
import dev.gambrel.yields.plan.Kind;
import dev.gambrel.yields.plan.Node;
import dev.gambrel.yields.plan.YieldPlan;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** Finds the parts that a sheet names: "leg / topside", or "topside" alone; "topside trimmed" is what its trims leave. */
final class PlanParts {
    private static final TradeName CARCASS = TradeName.of(TreePath.ROOT.last());
    private static final String TRIMMED = "trimmed";
    private static final int MOST_TOLD = 5;

    private final YieldPlan plan;
    private final Map<TradeName, List<Integer>> byLastName = new LinkedHashMap<>();
    private final Consumer<Diagnostic> findings;

    PlanParts(YieldPlan plan, Consumer<Diagnostic> findings) {
        this.plan = plan;
        this.findings = findings;
        for (int v = plan.carcass() + 1; v < plan.size(); v++) {
            List<TradeName> path = path(v);
            if (!path.isEmpty()) {
                byLastName
                        .computeIfAbsent(last(path), name -> new ArrayList<>())
                        .add(v);
            }
        }
    }

    /**
     * A part as it was weighed.
     *
     * @param node its line of the plan
     * @param state whole or trimmed
     */
    record Named(int node, State state) {}

    /** The part that is meant; nothing, and why, if none or several may be. */
    Optional<Named> find(Cell cell) {
        String written = cell.written();
        List<Integer> whole = nodes(written, this::isWhole);
        if (!whole.isEmpty()) {
            return one(cell, whole, State.WHOLE);
        }
        List<Integer> trimmed = isOfTrimmed(written) ? nodes(untrimmed(written), this::isTrimmed) : List.of();
        if (!trimmed.isEmpty()) {
            return one(cell, trimmed, State.TRIMMED);
        }
        findings.accept(unknown(cell));
        return Optional.empty();
    }

    private static boolean isOfTrimmed(String written) {
        return written.toLowerCase(Locale.ROOT).endsWith(TRIMMED);
    }

    private static String untrimmed(String written) {
        String name = written.substring(0, written.length() - TRIMMED.length()).strip();
        return name.endsWith(",") ? name.substring(0, name.length() - 1) : name;
    }

    private boolean isWhole(int v) {
        return plan.node(v).kind() != Kind.TRIMMED && v >= plan.carcass();
    }

    private boolean isTrimmed(int v) {
        Kind kind = plan.node(v).kind();
        return kind == Kind.TRIMMED || kind == Kind.CUT && plan.isEnd(v);
    }

    private List<Integer> nodes(String written, Predicate<Integer> which) {
        List<TradeName> names = names(written);
        if (names.isEmpty()) {
            return List.of();
        }
        boolean fromTop = names.get(0).equals(CARCASS);
        List<TradeName> wanted = fromTop ? names.subList(1, names.size()) : names;
        return (wanted.isEmpty() ? List.of(plan.carcass()) : byLastName.getOrDefault(last(wanted), List.of()))
                .stream()
                        .filter(which)
                        .filter(v -> fromTop ? path(v).equals(wanted) : endsWith(path(v), wanted))
                        .toList();
    }

    private static TradeName last(List<TradeName> names) {
        return names.get(names.size() - 1);
    }

    private List<TradeName> path(int v) {
        return plan.node(v).path().names();
    }

    private static boolean endsWith(List<TradeName> path, List<TradeName> names) {
        int from = path.size() - names.size();
        return from >= 0 && path.subList(from, path.size()).equals(names);
    }

    private static List<TradeName> names(String written) {
        List<TradeName> names = new ArrayList<>();
        for (String name : written.split("/", -1)) {
            if (!TradeName.isAcceptable(name)) {
                return List.of();
            }
            names.add(TradeName.of(name));
        }
        return names;
    }

    private Optional<Named> one(Cell cell, List<Integer> nodes, State state) {
        if (nodes.size() == 1) {
            return Optional.of(new Named(nodes.get(0), state));
        }
        findings.accept(Diagnostic.of(SheetCode.PART_UNCLEAR, cell.place())
                .with("part", cell.written())
                .with("count", nodes.size())
                .help("Which is meant? Write its address: " + addresses(nodes) + "."));
        return Optional.empty();
    }

    /** One right under the carcass is told apart from others of its name by the word carcass. */
    private String addresses(List<Integer> nodes) {
        return nodes.stream()
                        .limit(MOST_TOLD)
                        .map(v -> path(v).size() == 1 ? CARCASS + " / " + address(v) : address(v))
                        .collect(Collectors.joining("; "))
                + (nodes.size() > MOST_TOLD ? "; and more" : "");
    }

    private String address(int v) {
        return plan.node(v).path().toString();
    }

    /** What to call a line of the plan: its address, and whether it is trimmed. */
    static String called(Node node) {
        return node.address();
    }

    private Diagnostic unknown(Cell cell) {
        List<TradeName> names = names(isOfTrimmed(cell.written()) ? untrimmed(cell.written()) : cell.written());
        Diagnostic unknown = Diagnostic.of(SheetCode.PART_UNKNOWN, cell.place()).with("part", cell.written());
        if (names.isEmpty()) {
            return unknown.help("Write the name of a part as the specification has it, with / between cut and part.");
        }
        return NearestName.of(last(names), byLastName.keySet())
                .map(near -> unknown.help("Is " + addresses(nodes(near.text(), this::isWhole)) + " meant?"))
                .orElseGet(() -> unknown.help(
                        "Write the name as the specification has it; a way of working that this run does not take has no"
                                + " parts."));
    }
}
