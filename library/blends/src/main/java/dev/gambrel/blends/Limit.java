package dev.gambrel.blends;

import dev.gambrel.text.TradeName;
import java.util.Collections;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What tubs may make up together: Σ factor x ≤ most, with x the kilograms of each tub.
 *
 * @param words what it says, as it is written
 * @param factors what a kilogram of each tub counts; of tubs that are not named, nothing
 * @param most the most kilograms
 */
public record Limit(String words, SortedMap<TradeName, Double> factors, double most) {
    /** Copies the factors. */
    public Limit {
        factors = Collections.unmodifiableSortedMap(new TreeMap<>(factors));
    }

    /**
     * At most so much of some tubs together.
     *
     * @param words what it says
     * @param tubs the tubs
     * @param kilograms the most
     * @return the limit
     */
    public static Limit atMost(String words, Set<TradeName> tubs, double kilograms) {
        return new Limit(words, each(tubs, 1), kilograms);
    }

    /**
     * At least so much of some tubs together, such as of lots that must be used up.
     *
     * @param words what it says
     * @param tubs the tubs
     * @param kilograms the least
     * @return the limit
     */
    public static Limit atLeast(String words, Set<TradeName> tubs, double kilograms) {
        return new Limit(words, each(tubs, -1), -kilograms);
    }

    /**
     * Some tubs at most a part of others, such as pork at most a quarter of the beef.
     *
     * @param words what it says
     * @param tubs the tubs that are limited
     * @param part of the others, 0.25 for a quarter
     * @param others what they are compared with
     * @return the limit
     */
    public static Limit atMostPartOf(String words, Set<TradeName> tubs, double part, Set<TradeName> others) {
        SortedMap<TradeName, Double> factors = each(tubs, 1);
        others.forEach(name -> factors.merge(name, -part, Double::sum));
        return new Limit(words, factors, 0);
    }

    private static SortedMap<TradeName, Double> each(Set<TradeName> tubs, double factor) {
        SortedMap<TradeName, Double> factors = new TreeMap<>();
        tubs.forEach(name -> factors.put(name, factor));
        return factors;
    }

    double factor(Tub tub) {
        return factors.getOrDefault(tub.name(), 0.0);
    }
}
