/** Published rules about packs of one nominal quantity and about portions, as data, each figure with its source. Immutable values. */
package dev.gambrel.yields.packs.rule;
