package dev.gambrel.yields.composition;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Some parts of a whole against others, such as bone against meat: √(rs / (r + s)) ln (g / h), with g the geometric mean of r parts
 * and h that of s others (J. J. Egozcue and V. Pawlowsky-Glahn, "Groups of parts and their balances in compositional data analysis",
 * Mathematical Geology 37, 2005). What happens to the parts left out does not show in it.
 *
 * @param over the indices of the parts on the one side, 1 or more
 * @param under those of the parts on the other side, 1 or more
 */
public record Balance(List<Integer> over, List<Integer> under) {
    /**
     * Copies the lists.
     *
     * @throws IllegalArgumentException if a side is empty, or a part stands twice
     */
    public Balance {
        over = List.copyOf(over);
        under = List.copyOf(under);
        Set<Integer> all = new HashSet<>(over);
        all.addAll(under);
        if (over.isEmpty() || under.isEmpty() || all.size() != over.size() + under.size()) {
            throw new IllegalArgumentException("a balance has parts on both sides, each once: " + over + ", " + under);
        }
    }

    /**
     * How the logarithms of the shares count in it. The coefficients add up to 0, their squares to 1.
     *
     * @param parts how many parts the whole has
     * @return one for each part
     * @throws IndexOutOfBoundsException if a part of the balance is not among them
     */
    public double[] coefficients(int parts) {
        double[] coefficients = new double[parts];
        double r = over.size();
        double s = under.size();
        over.forEach(part -> coefficients[part] = Math.sqrt(s / (r * (r + s))));
        under.forEach(part -> coefficients[part] = -Math.sqrt(r / (s * (r + s))));
        return coefficients;
    }

    /**
     * Its value for a composition.
     *
     * @param composition a whole that has the parts
     * @return more than 0 where the parts on the one side outweigh those on the other
     * @throws IndexOutOfBoundsException if it does not have the parts
     */
    public double of(Composition composition) {
        double[] coefficients = coefficients(composition.size());
        double sum = 0;
        for (int i = 0; i < coefficients.length; i++) {
            sum += coefficients[i] * Math.log(composition.share(i));
        }
        return sum;
    }
}
