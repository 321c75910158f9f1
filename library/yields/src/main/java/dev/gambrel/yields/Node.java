package dev.gambrel.yields;

import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.tree.Home;

/**
 * One line of the plan.
 *
 * @param above the index of the cut above, -1 for what was weighed
 * @param level how deep, 0 for what was weighed
 * @param pieces how many to a carcass
 * @param home where it goes if nothing more is taken from it
 */
record Node(YieldRow.Kind kind, String name, TreePath path, int above, int level, int pieces, Home home) {}
