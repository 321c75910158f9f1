package dev.gambrel.json.trees;

import dev.gambrel.tree.BoneState;
import dev.gambrel.tree.Description;
import dev.gambrel.tree.Landmark;
import dev.gambrel.tree.Separation;
import dev.gambrel.tree.anatomy.OtherName;
import dev.gambrel.tree.anatomy.Reference;
import dev.gambrel.tree.anatomy.SkeletonPoint;
import dev.gambrel.tree.anatomy.SpineRegion;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;

/** What cuts are, what they are called elsewhere, and where they are parted. */
final class Descriptions {
    private Descriptions() {}

    static Arbitrary<Description> descriptions() {
        Arbitrary<Description> said = Combinators.combine(
                        Arbitraries.of(BoneState.values()),
                        Words.nameLists(),
                        Words.few(separations()),
                        Words.few(references()),
                        Words.few(otherNames()),
                        Words.freeLists())
                .as(Description::new);
        return Arbitraries.oneOf(said, Arbitraries.just(Description.NONE));
    }

    static Arbitrary<OtherName> otherNames() {
        return Combinators.combine(Words.names(), Words.freeLists()).as(OtherName::new);
    }

    static Arbitrary<Reference> references() {
        return Combinators.combine(Words.names(), Words.free(), Words.free()).as(Reference::new);
    }

    private static Arbitrary<Separation> separations() {
        return Combinators.combine(Words.freeLists(), landmarks()).as(Separation::new);
    }

    private static Arbitrary<Landmark> landmarks() {
        return Arbitraries.oneOf(
                Combinators.combine(points(), points()).as(Landmark.Between::new),
                Combinators.combine(Figures.counts(), Figures.counts()).as(Landmark.Ribs::new),
                Words.names().map(Landmark.At::new),
                Words.names().map(Landmark.Along::new),
                Words.free().map(Landmark.InWords::new),
                Arbitraries.create(Landmark.NotStated::new));
    }

    private static Arbitrary<SkeletonPoint> points() {
        Arbitrary<SpineRegion> regions = Arbitraries.of(SpineRegion.values());
        return Arbitraries.oneOf(
                Figures.counts().map(SkeletonPoint.Rib::new),
                Arbitraries.create(SkeletonPoint.LastRib::new),
                Combinators.combine(regions, Figures.counts()).as(SkeletonPoint.Vertebra::new),
                regions.map(SkeletonPoint.LastVertebra::new));
    }
}
