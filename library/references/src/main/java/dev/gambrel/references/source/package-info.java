/** Where a published number stands, and how sure it is. Immutable values. */
package dev.gambrel.references.source;
