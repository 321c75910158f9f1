package dev.gambrel.batches;

import dev.gambrel.diagnostic.Code;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Severity;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Counts reasons, and keeps the first of each in full. */
final class Tally {
    private final int most;
    private final Map<Code, Long> counts = new TreeMap<>(Comparator.comparing(Code::id));
    private final List<Diagnostic> shown = new ArrayList<>();

    Tally(int most) {
        this.most = most;
    }

    void clear() {
        counts.clear();
        shown.clear();
    }

    void count(Code code, long rows) {
        counts.merge(code, rows, Long::sum);
    }

    /** Keeps a finding in full if it is among the first of its kind. */
    void keep(Diagnostic finding) {
        if (keeps(finding.code())) {
            shown.add(finding);
        }
    }

    /** Whether another of a kind would be kept in full. */
    boolean keeps(Code code) {
        return shown.stream().filter(finding -> finding.code() == code).count() < most;
    }

    /** Takes in what was counted of later rows. */
    void add(Tally later) {
        later.shown.forEach(this::keep);
        later.counts.forEach(this::count);
    }

    List<Diagnostic> shown() {
        return shown;
    }

    List<BatchResult.Count> counts(Severity severity) {
        return counts.entrySet().stream()
                .filter(entry -> entry.getKey().severity() == severity)
                .map(entry -> new BatchResult.Count(entry.getKey(), entry.getValue()))
                .toList();
    }
}
