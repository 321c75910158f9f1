/** How long Gambrel takes, beside the bare parse of the same text and beside what somebody would use instead. */
package dev.gambrel.benchmarks;
