package dev.gambrel.json;

import dev.gambrel.json.located.ObjectReader;
import dev.gambrel.json.located.Reading;
import dev.gambrel.json.located.Readings;
import dev.gambrel.quantity.Dimension;
import dev.gambrel.text.TradeName;
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
import java.util.List;

/** Reads what a cut is, what it is called elsewhere, and where and with what it is parted from its neighbours. */
final class DescriptionReader {
    static final Reading<OtherName> OTHER_NAME =
            Readings.object(in -> new OtherName(name(in), in.list("regions", Readings::text)));

    private static final Reading<Reference.Rules> RULES =
            Readings.word(List.of(Reference.Rules.WORDS, Reference.Rules.NUMBER), Reference.Rules::words);

    static final Reading<Reference> REFERENCE = Readings.object(in -> new Reference(
            in.need("scheme", "who numbers", Readings::name),
            in.need("number", "the number in quotation marks", Readings::text),
            in.optional("edition", "", Readings::text),
            in.optional("but", "", Readings::text),
            in.optional("range", "", Readings::text),
            in.optional("rules", Reference.Rules.NOT_STATED, RULES),
            in.list("sources", Readings::name)));

    private static final Reading<BoneState> BONE_STATE =
            Readings.word(List.of(BoneState.BONE_IN, BoneState.PART_BONED, BoneState.BONELESS), BoneState::words);

    private static final Reading<SpineRegion> REGION = Readings.word(List.of(SpineRegion.values()), SpineRegion::words);

    private static final Reading<SkeletonPoint> POINT = new Readings.Kinds<SkeletonPoint>()
            .or("rib", in -> new SkeletonPoint.Rib(number(in, "number")))
            .or("last rib", in -> new SkeletonPoint.LastRib())
            .or("vertebra", in -> new SkeletonPoint.Vertebra(region(in), number(in, "number")))
            .or("last vertebra", in -> new SkeletonPoint.LastVertebra(region(in)));

    private static final Reading<Landmark> LANDMARK = new Readings.Kinds<Landmark>()
            .or("between", in -> new Landmark.Between(point(in, "first"), point(in, "second")))
            .or("ribs", in -> new Landmark.Ribs(number(in, "first"), number(in, "last")))
            .or("at", in -> new Landmark.At(in.need("place", "a place by name", Readings::name)))
            .or("along", in -> new Landmark.Along(line(in)))
            .or("at distance", in -> new Landmark.AtDistance(in.list("ends", Readings.object(DescriptionReader::end))))
            .or("parallel to", in -> new Landmark.ParallelTo(line(in)))
            .or("at right angles to", in -> new Landmark.RightAnglesTo(line(in)))
            .or("in words", in -> new Landmark.InWords(in.need("words", "where it is cut", Readings::text)));

    private static final Reading<Separation> SEPARATION = Readings.object(in -> new Separation(
            in.list("tools", Readings::text), in.optional("landmark", new Landmark.NotStated(), LANDMARK)));

    private static final Reading<Matching> MATCHING = new Readings.Kinds<Matching>()
            .or("alike", in -> new Matching.Alike())
            .or(
                    "within",
                    in -> new Matching.Within(in.need(
                            "difference",
                            "a weight",
                            Readings.object(weight -> FigureReader.quantity(weight, "amount", Dimension.WEIGHT)))));

    private static final Reading<Treatment> TREATMENT = new Readings.Kinds<Treatment>()
            .or("scored", in -> treatment(in, Treatment.Kind.SCORED))
            .or("left", in -> treatment(in, Treatment.Kind.LEFT));

    private DescriptionReader() {}

    static Description description(ObjectReader in) {
        return new Description(
                in.optional("boneState", BoneState.NOT_STATED, BONE_STATE),
                in.list("contents", Readings::name),
                in.list("separations", SEPARATION),
                in.list("references", REFERENCE),
                in.list("otherNames", OTHER_NAME),
                in.list("notes", Readings::text),
                in.optional("bench", Bench.NONE, Readings.object(DescriptionReader::bench))
                        .withTerms(in.list("terms", TermReader.TERM)));
    }

    private static Bench bench(ObjectReader in) {
        return new Bench(
                in.optional("matching", new Matching.NotStated(), MATCHING),
                in.optional("ribs", AnatomicalCount.NOT_STATED, Readings.object(FigureReader::count)),
                in.list("treatments", TREATMENT),
                in.list("after", Readings::name),
                in.optional("people", 1, Readings::count));
    }

    private static Treatment treatment(ObjectReader in, Treatment.Kind kind) {
        return new Treatment(
                kind, in.need("tissue", "a tissue by name", Readings::name), in.optional("reason", "", Readings::text));
    }

    private static Landmark.End end(ObjectReader in) {
        boolean atMost = in.has("atMost");
        return new Landmark.End(
                FigureReader.quantity(in, atMost ? "atMost" : "distance", Dimension.LENGTH),
                atMost,
                in.need("from", "what it is measured from", Readings::name),
                in.optional("at", "", Readings::text));
    }

    private static TradeName line(ObjectReader in) {
        return in.need("line", "a seam or line by name", Readings::name);
    }

    static TradeName name(ObjectReader in) {
        return in.need("name", "a name", Readings::name);
    }

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
