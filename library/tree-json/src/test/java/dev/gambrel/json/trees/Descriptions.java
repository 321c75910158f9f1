package dev.gambrel.json.trees;

import dev.gambrel.quantity.Dimension;
import dev.gambrel.tree.BoneState;
import dev.gambrel.tree.Description;
import dev.gambrel.tree.Landmark;
import dev.gambrel.tree.Separation;
import dev.gambrel.tree.anatomy.AnatomicalCount;
import dev.gambrel.tree.anatomy.OtherName;
import dev.gambrel.tree.anatomy.Reference;
import dev.gambrel.tree.anatomy.SkeletonPoint;
import dev.gambrel.tree.anatomy.SpineRegion;
import dev.gambrel.tree.bench.Bench;
import dev.gambrel.tree.bench.Matching;
import dev.gambrel.tree.bench.Treatment;
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
                        Words.freeLists(),
                        benches())
                .as(Description::new);
        return Arbitraries.oneOf(said, Arbitraries.just(Description.NONE));
    }

    static Arbitrary<OtherName> otherNames() {
        return Combinators.combine(Words.names(), Words.freeLists()).as(OtherName::new);
    }

    static Arbitrary<Reference> references() {
        return Combinators.combine(
                        Words.names(),
                        Words.free(),
                        Words.free(),
                        Words.free(),
                        Words.free(),
                        Arbitraries.of(Reference.Rules.values()),
                        Words.nameLists())
                .as(Reference::new);
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
                Words.few(ends()).map(Landmark.AtDistance::new),
                Words.names().map(Landmark.ParallelTo::new),
                Words.names().map(Landmark.RightAnglesTo::new),
                Words.free().map(Landmark.InWords::new),
                Arbitraries.create(Landmark.NotStated::new));
    }

    private static Arbitrary<Landmark.End> ends() {
        return Combinators.combine(
                        Figures.quantities(Dimension.LENGTH), Arbitraries.of(true, false), Words.names(), Words.free())
                .as(Landmark.End::new);
    }

    private static Arbitrary<Bench> benches() {
        Arbitrary<Matching> matchings = Arbitraries.oneOf(
                Figures.quantities(Dimension.WEIGHT).map(Matching.Within::new),
                Arbitraries.create(Matching.Alike::new),
                Arbitraries.create(Matching.NotStated::new));
        Arbitrary<Treatment> treatments = Combinators.combine(
                        Arbitraries.of(Treatment.Kind.values()), Words.names(), Words.free())
                .as(Treatment::new);
        Arbitrary<AnatomicalCount> ribs = Arbitraries.oneOf(
                Figures.anatomicalCounts().filter(AnatomicalCount::isStated),
                Arbitraries.just(AnatomicalCount.NOT_STATED));
        return Combinators.combine(
                        matchings,
                        ribs,
                        Words.few(treatments),
                        Words.nameLists(),
                        Figures.counts(),
                        Words.few(Terms.terms()))
                .as(Bench::new);
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
