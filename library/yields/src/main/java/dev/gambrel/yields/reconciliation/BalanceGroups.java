package dev.gambrel.yields.reconciliation;

import dev.gambrel.yields.figure.Estimate;
import java.util.ArrayList;
import java.util.List;

/**
 * Which readings meet in one balance. A cut that was not weighed itself shares the balance of what it is cut from: only both together can
 * be checked. Each balance is named by its uppermost cut, which has a reading.
 *
 * <p>A reading stands between the balance of its own parts and that above. Where one of both is missing, an error in it looks the same as one
 * in any other reading that stands between the same balance and nothing, and as weight that nobody weighed (M. J. Bagajewicz, "Brief
 * review of recent developments in data reconciliation", Latin American Applied Research 30, 2000: equivalence of gross errors). Immutable.
 */
public final class BalanceGroups {
    /** No balance. */
    public static final int NONE = -1;

    private final Reconciliation sheet;
    private final int[] own;

    private BalanceGroups(Reconciliation sheet, int[] own) {
        this.sheet = sheet;
        this.own = own;
    }

    /**
     * The balances of a sheet. O(nodes).
     *
     * @param sheet in balance
     * @return which readings meet in each
     */
    public static BalanceGroups of(Reconciliation sheet) {
        int[] own = new int[sheet.tree().size()];
        BalanceGroups groups = new BalanceGroups(sheet, own);
        for (int v = 0; v < own.length; v++) {
            if (!sheet.passes().isBalanced(v)) {
                own[v] = NONE;
            } else {
                own[v] = sheet.passes().isUsed(v) ? v : groups.above(v);
            }
        }
        return groups;
    }

    /**
     * The balance of the parts of a node.
     *
     * @param node of the tree
     * @return the uppermost cut of that balance, or {@link #NONE}
     */
    public int own(int node) {
        return own[node];
    }

    /**
     * The balance in which a node is a part.
     *
     * @param node of the tree
     * @return the uppermost cut of that balance, or {@link #NONE}
     */
    public int above(int node) {
        return node == 0 ? NONE : own[sheet.tree().above(node)];
    }

    /**
     * Whether a reading stands between two balances: then an error in it can be told from all others.
     *
     * @param node one with a reading
     * @return true if its parts and its sisters both are known
     */
    public boolean standsBetweenTwo(int node) {
        return own[node] != NONE && above(node) != NONE;
    }

    /**
     * What lacks in a balance if nothing else is wrong.
     *
     * @param balance named by its uppermost cut
     * @return the weight that nobody weighed, less than 0 if more came out than went in, with its standard deviation
     */
    public Estimate missing(int balance) {
        double curvature = sheet.passes().forceVariance(balance);
        return Estimate.of(sheet.passes().force(balance) / curvature, 1 / curvature);
    }

    /**
     * The cuts that share each balance.
     *
     * @return for each node the cuts of the balance named by it; none for most
     */
    public List<List<Integer>> cuts() {
        List<List<Integer>> cuts = empty();
        for (int v = 0; v < own.length; v++) {
            if (own[v] != NONE) {
                cuts.get(own[v]).add(v);
            }
        }
        return cuts;
    }

    /**
     * The readings of each balance that stand in no other.
     *
     * @return for each node the readings of the balance named by it that the figures cannot tell apart; none for most
     */
    public List<List<Integer>> readings() {
        List<List<Integer>> alike = empty();
        for (int v = 0; v < own.length; v++) {
            int balance = Math.max(own[v], above(v));
            if (sheet.passes().isUsed(v) && balance != NONE && !standsBetweenTwo(v)) {
                alike.get(balance).add(v);
            }
        }
        return alike;
    }

    private List<List<Integer>> empty() {
        List<List<Integer>> lists = new ArrayList<>();
        for (int v = 0; v < own.length; v++) {
            lists.add(new ArrayList<>());
        }
        return lists;
    }
}
