/** What a specification says, one thing at a time, so that two can be held against each other. Not public. */
package dev.gambrel.yields.comparison.fact;
