/**
 * The cut tree as JSON: versioned, canonical, exact in both directions, and described by a JSON Schema.
 *
 * <p>Everything here is a pure function of its arguments and safe between threads. What is read may be hostile: it is
 * held against {@link dev.gambrel.limits.Limits} first, and every fault becomes a finding.
 */
package dev.gambrel.json;
