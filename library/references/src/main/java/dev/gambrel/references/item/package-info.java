/** Published numbers of cuts as data: name, animal, bone state, each with its source. Immutable values, safe to share. */
package dev.gambrel.references.item;
