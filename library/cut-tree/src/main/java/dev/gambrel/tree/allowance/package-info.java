/** Warnings that a house accepts with a reason: taken from what the rules find, and held against it. */
package dev.gambrel.tree.allowance;
