/**
 * JSON that anybody may have sent, as values that know where they stand.
 *
 * <p>What is read is held against {@link dev.gambrel.limits.Limits} first: length, depth, digits, how many values. Nothing in a file names a type,
 * figures stay as they are written, and every fault becomes a finding.
 */
package dev.gambrel.json.located;
