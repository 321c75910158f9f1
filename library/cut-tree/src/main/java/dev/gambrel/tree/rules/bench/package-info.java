/** Rules of portions and of what the bench is told. */
package dev.gambrel.tree.rules.bench;
