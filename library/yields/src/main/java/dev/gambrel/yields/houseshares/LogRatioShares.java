package dev.gambrel.yields.houseshares;

import dev.gambrel.yields.composition.Composition;

/**
 * The shares of a cut by the ratios of its parts, so that means and ranges stay inside the whole. The mean of ratios is a geometric
 * mean: it lies a little off the mean of shares, so say which is shown.
 */
public sealed interface LogRatioShares permits LogRatioCentre, LogRatioModel {
    /**
     * Of the tests alone.
     *
     * @param tests 1 or more
     * @return where they lie; with 2 tests or more how they stray too
     */
    static LogRatioShares of(CutTests tests) {
        return new LogRatioFit(tests).alone();
    }

    /**
     * Of the tests, drawn towards a published table.
     *
     * <p>Log-ratios are taken as normal, with the Normal-inverse-Wishart prior of mean m, κ, Ψ = κ Σ₀ and ν = κ + D − 3, where Σ₀ follows
     * from the published spreads to the first order (A. Gelman and others, Bayesian Data Analysis, 3rd edition, 2013, section 3.6, from
     * memory). So the centre is the table's and the tests' with the weights κ and n, and the covariance (κ Σ₀ + S + κn / (κ + n) (y − m)(y
     * − m)') / (κ + n − 1). That works with fewer tests than parts. ν is such that without a table the range of each log-ratio is
     * Student's, with n − 1 degrees of freedom.
     *
     * @param tests 1 or more
     * @param table what is published and how many tests it is worth; spreads that it does not state count nothing
     * @return where they lie; and how they stray where tests or table tell it
     * @throws IllegalArgumentException if the table has other parts
     */
    static LogRatioShares of(CutTests tests, Shrinkage table) {
        return new LogRatioFit(tests).with(table);
    }

    /**
     * Where the shares lie.
     *
     * @return their centre
     */
    Composition centre();

    /**
     * What to expect of the next carcasses: the centre, with spreads to the first order.
     *
     * @return shares that close, and spreads that do; spreads not stated where they are not known
     */
    ExpectedShares expected();
}
