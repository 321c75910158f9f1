package dev.gambrel.json;

import dev.gambrel.tree.Landmark;
import dev.gambrel.tree.Separation;
import dev.gambrel.tree.SkeletonPoint;
import dev.gambrel.tree.SpineRegion;
import java.util.List;

/** Reads where and with what a cut is parted from its neighbours. */
final class SeparationReader {
    private static final Reading<SpineRegion> REGION = Readings.word(List.of(SpineRegion.values()), SpineRegion::words);

    private static final Reading<SkeletonPoint> POINT = new Kinds<SkeletonPoint>()
            .or("rib", in -> new SkeletonPoint.Rib(number(in, "number")))
            .or("last rib", in -> new SkeletonPoint.LastRib())
            .or("vertebra", in -> new SkeletonPoint.Vertebra(region(in), number(in, "number")))
            .or("last vertebra", in -> new SkeletonPoint.LastVertebra(region(in)));

    private static final Reading<Landmark> LANDMARK = new Kinds<Landmark>()
            .or("between", in -> new Landmark.Between(point(in, "first"), point(in, "second")))
            .or("ribs", in -> new Landmark.Ribs(number(in, "first"), number(in, "last")))
            .or("at", in -> new Landmark.At(in.need("place", "a place by name", Readings::name)))
            .or("along", in -> new Landmark.Along(in.need("line", "a seam or line by name", Readings::name)))
            .or("in words", in -> new Landmark.InWords(in.need("words", "where it is cut", Readings::text)));

    static final Reading<Separation> SEPARATION = Readings.object(in -> new Separation(
            in.list("tools", Readings::text), in.optional("landmark", new Landmark.NotStated(), LANDMARK)));

    private SeparationReader() {}

    private static SkeletonPoint point(ObjectReader in, String field) {
        return in.need(field, "a rib or a vertebra", POINT);
    }

    private static SpineRegion region(ObjectReader in) {
        return in.need("region", "a region of the spine", REGION);
    }

    private static int number(ObjectReader in, String field) {
        return in.need(field, "a whole number", Readings::count);
    }
}
