package dev.gambrel.compiler.lower;

import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.text.SourceText;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Findings in reading order: by file, by place, by code. */
final class FindingOrder {
    private FindingOrder() {}

    static List<Diagnostic> sort(List<Diagnostic> found, List<SourceText> texts) {
        if (found.size() <= 1) {
            return List.copyOf(found);
        }
        Map<String, Integer> rank = new HashMap<>();
        texts.forEach(text -> rank.putIfAbsent(text.name(), rank.size()));
        return found.stream()
                .sorted(Comparator.comparingInt((Diagnostic d) -> file(d, rank))
                        .thenComparingInt(FindingOrder::offset)
                        .thenComparing(d -> d.code().id()))
                .toList();
    }

    private static int file(Diagnostic finding, Map<String, Integer> rank) {
        Place place = finding.place();
        if (place instanceof Place.Written written) {
            place = written.text();
        }
        return place instanceof Place.InText text
                ? rank.getOrDefault(text.text().name(), -1)
                : -1;
    }

    private static int offset(Diagnostic finding) {
        Place place = finding.place();
        if (place instanceof Place.Written written) {
            return written.text().span().start();
        }
        return place instanceof Place.InText text ? text.span().start() : 0;
    }
}
