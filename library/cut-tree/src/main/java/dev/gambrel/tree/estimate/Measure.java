package dev.gambrel.tree.estimate;

import dev.gambrel.text.TradeName;

/**
 * Something that is measured or judged on the carcass.
 *
 * @param name what it is called
 * @param scale how a reading is told
 * @param where in words, where and how it is taken; empty where nobody said
 * @param range the readings that equations were made for
 */
public record Measure(TradeName name, Scale scale, String where, ValidRange range) {}
