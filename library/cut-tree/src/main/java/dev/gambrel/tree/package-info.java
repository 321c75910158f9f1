/**
 * The cut tree: how a carcass is divided, down to products, streams and losses.
 *
 * <p>Every type here is an immutable value. A tree can hold what no rule allows, so that every rule can be reported at
 * once; {@link dev.gambrel.tree.rules.TreeRules} says whether it may be used.
 */
package dev.gambrel.tree;
