package dev.gambrel.yields.composition;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.util.List;
import java.util.Optional;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.DirichletSampler;
import org.apache.commons.rng.simple.RandomSource;
import org.junit.jupiter.api.Test;

class DirichletFitTest {
    private static final CompositionSample DUCKLINGS = new CompositionSample(
            Ducklings.shares().stream().map(Composition::of).toList());

    /** 3.22, 20.38 and 21.69 in A. Narayanan, 1991 (from memory); the further digits computed independently. */
    @Test
    void the_likeliest_distribution_of_the_ducklings_is_the_published_one() {
        Dirichlet fit = Dirichlet.likeliest(DUCKLINGS).orElseThrow();
        double[] published = {3.22, 20.38, 21.69};
        double[] computed = {3.215447, 20.382642, 21.685426};
        for (int i = 0; i < 3; i++) {
            assertEquals(published[i], fit.alpha(i), 0.005);
            assertEquals(computed[i], fit.alpha(i), 1e-5);
        }
        assertEquals(45.283515, fit.concentration(), 1e-5);
    }

    /** Computed independently. */
    @Test
    void its_means_are_not_the_means_of_the_ducklings() {
        Dirichlet fit = Dirichlet.likeliest(DUCKLINGS).orElseThrow();
        double[] fitted = {0.071007, 0.450112, 0.478881};
        double[] seen = {0.071543, 0.451130, 0.477326};
        for (int i = 0; i < 3; i++) {
            int part = i;
            double mean = DUCKLINGS.compositions().stream()
                    .mapToDouble(each -> each.share(part))
                    .average()
                    .orElseThrow();
            assertEquals(fitted[i], fit.moments().mean(i), 1e-6);
            assertEquals(seen[i], mean, 1e-6);
            assertNotEquals(mean, fit.moments().mean(i), 1e-4);
        }
    }

    /** Draws of a known distribution, two of whose numbers are below 1. */
    @Test
    void numbers_are_found_again_from_many_draws() {
        UniformRandomProvider random = RandomSource.XO_RO_SHI_RO_128_PP.create(20_260_301L);
        double[] alpha = {0.4, 0.9, 30};
        List<Composition> draws = DirichletSampler.of(random, alpha)
                .samples(20_000)
                .map(Composition::of)
                .toList();
        Dirichlet fit = Dirichlet.likeliest(new CompositionSample(draws)).orElseThrow();
        for (int i = 0; i < alpha.length; i++) {
            assertEquals(alpha[i], fit.alpha(i), 0.04 * alpha[i]);
        }
    }

    @Test
    void shares_that_do_not_vary_have_no_such_distribution() {
        Composition one = Composition.of(1, 2, 3);
        assertEquals(Optional.empty(), Dirichlet.likeliest(new CompositionSample(List.of(one))));
        assertEquals(Optional.empty(), Dirichlet.likeliest(new CompositionSample(List.of(one, one, one))));
    }
}
