package dev.gambrel.yields.drift;

import dev.gambrel.yields.control.Group;
import dev.gambrel.yields.control.GroupComparison;
import dev.gambrel.yields.drift.LabelledTest.Common;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Compares every part by cutter, lot and scale. */
final class Groups {
    private Groups() {}

    /** Everything compared, told or not, in the order of the plan. */
    static List<GroupFinding> compared(List<LabelledTest> tests, List<CutDrift> cuts) {
        List<GroupFinding> all = new ArrayList<>();
        for (CutDrift cut : cuts) {
            for (PartDrift part : cut.told()) {
                for (Common common : Common.values()) {
                    compare(tests, cut, part, common).forEach(all::add);
                }
            }
        }
        return all;
    }

    private static Stream<GroupFinding> compare(List<LabelledTest> tests, CutDrift cut, PartDrift part, Common common) {
        Map<String, List<Double>> figures = new LinkedHashMap<>();
        for (int i = 0; i < cut.tests().size(); i++) {
            String label = tests.get(cut.tests().get(i)).label(common, part.part());
            if (!label.isEmpty()) {
                figures.computeIfAbsent(label, name -> new ArrayList<>())
                        .add(part.percents().get(i));
            }
        }
        List<Group> groups = figures.entrySet().stream()
                .map(entry -> new Group(entry.getKey(), entry.getValue()))
                .toList();
        return GroupComparison.of(groups) instanceof GroupComparison compared
                ? compared.differences().stream()
                        .limit(compared.differences().size() == 2 ? 1 : Long.MAX_VALUE)
                        .map(difference -> new GroupFinding(part.part(), common, difference))
                : Stream.empty();
    }

    /**
     * Those that chance hardly explains, so that of what is told one in 1 / level is chance on average (Y. Benjamini and Y. Hochberg,
     * "Controlling the false discovery rate", Journal of the Royal Statistical Society B 57, 1995).
     */
    static List<GroupFinding> told(List<GroupFinding> compared, double level) {
        List<Double> chances = compared.stream()
                .map(finding -> finding.difference().chance())
                .sorted(Comparator.naturalOrder())
                .toList();
        double limit = -1;
        for (int i = 0; i < chances.size(); i++) {
            if (chances.get(i) <= level * (i + 1) / chances.size()) {
                limit = chances.get(i);
            }
        }
        double most = limit;
        return compared.stream()
                .filter(finding -> finding.difference().chance() <= most)
                .toList();
    }
}
