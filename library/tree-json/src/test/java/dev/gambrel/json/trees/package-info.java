/** Cut trees made by chance, with every kind of thing that a tree can hold, for laws that any tree must keep. */
package dev.gambrel.json.trees;
