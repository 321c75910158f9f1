package dev.gambrel.yields.working;

import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.Way;
import dev.gambrel.tree.choice.Choice;
import dev.gambrel.tree.choice.Condition;
import dev.gambrel.tree.choice.Grade;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The tree of a batch: cuts that are worked alike in every carcass are settled; of the others all ways stand side by side.
 *
 * @param worked the tree without ways; the shares of ways that stand side by side are placeholders
 * @param open the cuts of which each carcass decides, from the top down
 */
public record OpenWays(Worked worked, List<Open> open) {
    /** Copies the list. */
    public OpenWays {
        open = List.copyOf(open);
    }

    /**
     * A cut whose ways depend on the carcass.
     *
     * @param cut its address
     * @param ways the ways that may be in use, in the order in which they stand in the tree of the batch
     */
    public record Open(TreePath cut, List<Way> ways) {
        /** Copies the list. */
        public Open {
            ways = List.copyOf(ways);
        }

        /**
         * What the carcass is asked.
         *
         * @return the first condition
         */
        public Condition asked() {
            return ways.stream()
                    .flatMap(way -> Chooser.condition(way).stream())
                    .findFirst()
                    .orElseThrow();
        }

        /**
         * How a carcass of one value of the grade is worked.
         *
         * @param grade the grade that the conditions ask for
         * @param value one of its values
         * @return one split for each way
         */
        public List<Split> graded(Grade grade, TradeName value) {
            return Chooser.conditioned(ways, condition -> grade.meets((Condition.Graded) condition, value));
        }
    }

    /**
     * Settles what is the same for every carcass.
     *
     * @param tree a tree in which {@link dev.gambrel.tree.rules.TreeRules} finds no error
     * @param working what the batch asks for; a grade that it does not give is one that each carcass has
     * @return the tree of the batch, or errors of {@link WorkingCode}
     */
    public static Result<OpenWays> of(CutTree tree, Working working) {
        List<Diagnostic> found = new ArrayList<>();
        Map<TreePath, List<Way>> ways = WaysInTree.of(tree);
        Map<TreePath, List<Split>> orders = Orders.find(working.orders(), ways, found);
        Map<TradeName, TradeName> grades = Grades.find(working.grades(), tree.carcass(), found);
        if (!found.isEmpty()) {
            return Result.failed(found);
        }
        List<Open> open = new ArrayList<>();
        Map<TreePath, List<Split>> sideBySide = new HashMap<>();
        ways.forEach((cut, each) -> {
            if (!orders.containsKey(cut) && isOpen(each, grades)) {
                List<Way> used = each.stream().filter(OpenWays::mayBeUsed).toList();
                Split alike = new Split(1.0 / used.size(), 1.0 / used.size());
                sideBySide.put(
                        cut,
                        each.stream()
                                .map(way -> mayBeUsed(way) ? alike : Split.NONE)
                                .toList());
                open.add(new Open(cut, used));
            }
        });
        Chooser chooser = new Chooser(orders, grades, OpenWays::neverAsked);
        return Result.of(new OpenWays(WorkedTree.of(tree, chooser, sideBySide).worked(), open), List.of());
    }

    private static boolean isOpen(List<Way> ways, Map<TradeName, TradeName> grades) {
        return ways.stream()
                .flatMap(way -> Chooser.condition(way).stream())
                .findFirst()
                .filter(first -> !(first instanceof Condition.Graded graded && grades.containsKey(graded.grade())))
                .isPresent();
    }

    private static boolean mayBeUsed(Way way) {
        return !(way.choice() instanceof Choice.OnRequest);
    }

    private static Quantity neverAsked() {
        throw new IllegalStateException("a cut whose conditions ask for weights is left open");
    }
}
