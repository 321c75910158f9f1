package dev.gambrel.tree;

import dev.gambrel.diagnostic.TreePath;

/**
 * A warning that the house accepts, and why.
 *
 * <p>It holds for a part itself and, of a cut, for its own lines: bones, trims, losses, portions and the rest. It does not
 * hold for the cuts in it. On the carcass it holds for streams, sources, the species and the steps between bases too.
 *
 * @param path the part that it holds for
 * @param finding the warning by its number or its name: "G0801" or "outside-published"
 * @param reason why it is accepted, for whoever reads it next
 */
public record Allowance(TreePath path, String finding, String reason) {}
