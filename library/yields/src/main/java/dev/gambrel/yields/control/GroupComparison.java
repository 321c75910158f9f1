package dev.gambrel.yields.control;

import dev.gambrel.yields.figure.Interval;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.statistics.distribution.FDistribution;

/**
 * Whether groups of tests differ, such as the tests of several cutters.
 *
 * <p>Assumed: tests do not hang together, and figures are about normal. The F test assumes besides that all groups stray alike (one-way
 * analysis of variance, R. A. Fisher). Of single groups each is compared with all others by Welch's t, which does not (B. L. Welch, "The
 * generalization of 'Student's' problem when several different population variances are involved", Biometrika 34, 1947), adjusted for the
 * number of groups after Šidák (Z. Šidák, "Rectangular confidence regions for the means of multivariate normal distributions", Journal of the
 * American Statistical Association 62, 1967). A difference is no cause: cutters may have had other carcasses.
 *
 * @param statistic F: the mean square between groups over that within
 * @param between degrees of freedom between groups
 * @param within degrees of freedom within
 * @param chance how often chance alone makes groups differ as much as these or more
 * @param differences one for each group, in order
 * @param leftOut groups of one test, which tell nothing of how they stray
 */
public record GroupComparison(
        double statistic,
        int between,
        int within,
        double chance,
        List<GroupDifference> differences,
        List<String> leftOut)
        implements GroupAnswer {
    /** How sure a difference is that is told. */
    public static final double SURE = 0.95;

    /** Copies the lists. */
    public GroupComparison {
        differences = List.copyOf(differences);
        leftOut = List.copyOf(leftOut);
    }

    /**
     * Compares groups.
     *
     * @param groups in any order, each with a name of its own
     * @return the comparison; or why there is none
     * @throws IllegalArgumentException if two have the same name
     */
    public static GroupAnswer of(List<Group> groups) {
        if (groups.stream().map(Group::name).distinct().count() != groups.size()) {
            throw new IllegalArgumentException("each group has a name of its own");
        }
        List<Group> several =
                groups.stream().filter(group -> group.values().size() > 1).toList();
        if (several.size() < 2) {
            return new TooFew(several.stream().map(Group::name).toList());
        } else if (several.stream().allMatch(group -> new Readings(group.values()).neverVary())) {
            return new NeverVaries();
        }
        List<String> leftOut = groups.stream()
                .filter(group -> group.values().size() == 1)
                .map(Group::name)
                .toList();
        return compared(several, leftOut);
    }

    private static GroupComparison compared(List<Group> groups, List<String> leftOut) {
        Readings all = all(groups);
        double squaresBetween = 0;
        double squaresWithin = 0;
        for (Group group : groups) {
            Readings own = new Readings(group.values());
            squaresBetween += own.size() * Math.pow(own.mean() - all.mean(), 2);
            squaresWithin += own.variance() * (own.size() - 1);
        }
        int between = groups.size() - 1;
        int within = all.size() - groups.size();
        double f = squaresBetween / between / (squaresWithin / within);
        return new GroupComparison(
                f,
                between,
                within,
                FDistribution.of(between, within).survivalProbability(f),
                groups.stream().map(group -> difference(group, groups)).toList(),
                leftOut);
    }

    private static Readings all(List<Group> groups) {
        List<Double> values = new ArrayList<>();
        groups.forEach(group -> values.addAll(group.values()));
        return new Readings(values);
    }

    private static GroupDifference difference(Group group, List<Group> groups) {
        Readings own = new Readings(group.values());
        Readings others = all(groups.stream().filter(each -> each != group).toList());
        WelchTest test = WelchTest.of(own, others);
        int comparisons = groups.size() == 2 ? 1 : groups.size();
        double half = test.half(Math.pow(SURE, 1.0 / comparisons));
        return new GroupDifference(
                group.name(),
                own.size(),
                others.size(),
                test,
                new Interval(test.difference() - half, test.difference() + half),
                -Math.expm1(comparisons * Math.log1p(-test.chance())));
    }
}
