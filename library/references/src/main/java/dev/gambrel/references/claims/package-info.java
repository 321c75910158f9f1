/** What words claim beside a published number, held against what the number means. Immutable values, pure functions. */
package dev.gambrel.references.claims;
