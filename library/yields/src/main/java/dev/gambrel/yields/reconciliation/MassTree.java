package dev.gambrel.yields.reconciliation;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * What is cut from what, as numbers: nodes from 0 up, each below an earlier one. A node with parts weighs what its parts weigh
 * together; a loss is a part. Immutable; safe between threads.
 */
public final class MassTree {
    private final int[] above;
    private final int[] first;
    private final int[] next;

    private MassTree(int[] above, int[] first, int[] next) {
        this.above = above;
        this.first = first;
        this.next = next;
    }

    /**
     * A tree.
     *
     * @param above for each node the one that it is cut from, an earlier one; -1 for the first, and for no other
     * @return the tree
     * @throws IllegalArgumentException if there is no node, or one does not stand after what it is cut from
     */
    public static MassTree of(int... above) {
        if (above.length == 0 || above[0] != -1) {
            throw new IllegalArgumentException("the first node is cut from nothing: -1");
        }
        int[] first = new int[above.length];
        int[] next = new int[above.length];
        Arrays.fill(first, -1);
        Arrays.fill(next, -1);
        for (int v = above.length - 1; v > 0; v--) {
            if (above[v] < 0 || above[v] >= v) {
                throw new IllegalArgumentException(
                        "node " + v + " is cut from node " + above[v] + ", not an earlier one");
            }
            next[v] = first[above[v]];
            first[above[v]] = v;
        }
        return new MassTree(above.clone(), first, next);
    }

    /**
     * How many nodes there are.
     *
     * @return 1 or more
     */
    public int size() {
        return above.length;
    }

    /**
     * What a node is cut from.
     *
     * @param node any node
     * @return an earlier node, or -1
     */
    public int above(int node) {
        return above[node];
    }

    /**
     * Whether nothing is cut from a node.
     *
     * @param node any node
     * @return true if it has no parts
     */
    public boolean isEnd(int node) {
        return first[node] == -1;
    }

    /**
     * What is cut from a node.
     *
     * @param node any node
     * @return its parts, in order
     */
    public IntStream parts(int node) {
        return IntStream.iterate(first[node], part -> part != -1, part -> next[part]);
    }
}
