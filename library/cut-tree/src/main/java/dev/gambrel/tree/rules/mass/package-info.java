/** What holds of mass: shares close, agree with one another, and stray no further than they can. */
package dev.gambrel.tree.rules.mass;
