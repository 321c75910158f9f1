package dev.gambrel.yields.closure;

/**
 * The shares vary in two ways that know nothing of one another, such as from carcass to carcass and with what is not known of
 * their means.
 *
 * @param one how they vary in the one way
 * @param other how they vary in the other
 */
record InTwoWays(Closure one, Closure other) implements Closure {
    @Override
    public double covariance(double[] y, double[] z, int first) {
        return one.covariance(y, z, first) + other.covariance(y, z, first);
    }
}
