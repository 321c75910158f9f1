/**
 * How the shares of cuts move from one cutting test to the next, and whether cutters, lots or scales differ. Shares are per cent of the cut
 * that a part comes from, by reconciled weights.
 */
package dev.gambrel.yields.drift;
