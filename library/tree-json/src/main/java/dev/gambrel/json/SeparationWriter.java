package dev.gambrel.json;

import dev.gambrel.tree.Landmark;
import dev.gambrel.tree.Separation;
import dev.gambrel.tree.SkeletonPoint;
import java.util.Optional;

/** Writes where and with what a cut is parted from its neighbours. */
final class SeparationWriter {
    private SeparationWriter() {}

    static Canonical separation(Separation separation) {
        return Canonical.fields()
                .putUnlessEmpty("tools", separation.tools())
                .putIfStated("landmark", landmark(separation.landmark()));
    }

    private static Optional<Canonical> landmark(Landmark landmark) {
        if (landmark instanceof Landmark.Between between) {
            return Optional.of(Canonical.kind("between")
                    .put("first", point(between.first()))
                    .put("second", point(between.second())));
        }
        if (landmark instanceof Landmark.Ribs ribs) {
            return Optional.of(Canonical.kind("ribs").put("first", ribs.first()).put("last", ribs.last()));
        }
        if (landmark instanceof Landmark.At at) {
            return Optional.of(Canonical.kind("at").put("place", at.place()));
        }
        if (landmark instanceof Landmark.Along along) {
            return Optional.of(Canonical.kind("along").put("line", along.line()));
        }
        return landmark instanceof Landmark.InWords free
                ? Optional.of(Canonical.kind("in words").put("words", free.words()))
                : Optional.empty();
    }

    private static Canonical point(SkeletonPoint point) {
        if (point instanceof SkeletonPoint.Rib rib) {
            return Canonical.kind("rib").put("number", rib.number());
        }
        if (point instanceof SkeletonPoint.LastRib) {
            return Canonical.kind("last rib");
        }
        if (point instanceof SkeletonPoint.Vertebra vertebra) {
            return Canonical.kind("vertebra")
                    .put("region", vertebra.region().words())
                    .put("number", vertebra.number());
        }
        SkeletonPoint.LastVertebra last = (SkeletonPoint.LastVertebra) point;
        return Canonical.kind("last vertebra").put("region", last.region().words());
    }
}
