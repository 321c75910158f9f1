/** What to aim at so that packs keep the rules, and how likely a test is to pass a batch. Immutable values; maths in double. */
package dev.gambrel.yields.packs.planning;
