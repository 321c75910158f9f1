package dev.gambrel.yields.figure;

/**
 * Several figures of several carcasses together, and how they vary together in both ways.
 *
 * @param between as carcasses are different from one another
 * @param doubt as the mean shares are not known exactly; of the same means
 */
public record CombinedFigures(JointEstimate between, JointEstimate doubt) {
    /**
     * One figure by itself.
     *
     * @param figure its index
     * @return mean and both spreads
     */
    public CombinedEstimate figure(int figure) {
        return new CombinedEstimate(
                between.mean(figure),
                between.figure(figure).spread(),
                doubt.figure(figure).spread());
    }

    /**
     * With both ways together, which know nothing of one another: their covariances add up.
     *
     * @return the figures; a covariance is not stated unless it is in both ways
     */
    public JointEstimate whole() {
        return between.alsoVarying(doubt);
    }
}
