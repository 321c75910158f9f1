package dev.gambrel.compiler.meaning;

import dev.gambrel.compiler.code.MeaningCode;
import dev.gambrel.compiler.parse.FileReport;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.text.NearestName;
import dev.gambrel.text.Span;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.anatomy.SpineRegion;
import java.util.List;
import java.util.Optional;

/** Regions of the spine by name. */
public final class SpineRegions {
    private SpineRegions() {}

    /** The region of a name; nothing, after a finding, if it is not one. */
    public static Optional<SpineRegion> read(String word, Span span, FileReport report) {
        Optional<SpineRegion> region = SpineRegion.of(word);
        if (region.isEmpty()) {
            List<TradeName> known = List.of(SpineRegion.values()).stream()
                    .map(r -> TradeName.of(r.words()))
                    .toList();
            Diagnostic finding =
                    report.finding(MeaningCode.UNKNOWN_REGION, span).with("region", word);
            report.add(NearestName.of(word, known)
                    .map(near -> report.didYouMean(finding, span, near))
                    .orElse(finding.help("The regions are cervical, thoracic, lumbar, sacral and caudal.")));
        }
        return region;
    }
}
