package dev.gambrel.json.writing;

import dev.gambrel.tree.BoneState;
import dev.gambrel.tree.Description;
import dev.gambrel.tree.Landmark;
import dev.gambrel.tree.Separation;
import dev.gambrel.tree.anatomy.OtherName;
import dev.gambrel.tree.anatomy.Reference;
import dev.gambrel.tree.anatomy.SkeletonPoint;
import dev.gambrel.tree.bench.Bench;
import dev.gambrel.tree.bench.Matching;
import dev.gambrel.tree.bench.Treatment;
import java.util.List;
import java.util.Optional;

/** Writes what a cut is, what it is called elsewhere, and where and with what it is parted from its neighbours. */
final class DescriptionWriter {
    private DescriptionWriter() {}

    static Optional<Canonical> description(Description description) {
        if (description.equals(Description.NONE)) {
            return Optional.empty();
        }
        BoneState boneState = description.boneState();
        return Optional.of(Canonical.fields()
                .putUnlessEmpty("boneState", boneState == BoneState.NOT_STATED ? "" : boneState.words())
                .putUnlessEmpty("contents", description.contents())
                .putUnlessEmpty("separations", description.separations(), DescriptionWriter::separation)
                .putUnlessEmpty("references", description.references(), DescriptionWriter::reference)
                .putUnlessEmpty("otherNames", description.otherNames(), DescriptionWriter::otherName)
                .putUnlessEmpty("notes", description.notes())
                .putIfStated("bench", bench(description.bench()))
                .putUnlessEmpty("terms", description.terms(), TermWriter::term));
    }

    private static Optional<Canonical> bench(Bench bench) {
        if (bench.withTerms(List.of()).equals(Bench.NONE)) {
            return Optional.empty();
        }
        Canonical.Fields fields = Canonical.fields().putIfStated("matching", matching(bench.matching()));
        if (bench.ribs().isStated()) {
            fields.put("ribs", FigureWriter.count(bench.ribs()));
        }
        fields.putUnlessEmpty("treatments", bench.treatments(), DescriptionWriter::treatment)
                .putUnlessEmpty("after", bench.after());
        return Optional.of(bench.people() == 1 ? fields : fields.put("people", bench.people()));
    }

    private static Optional<Canonical> matching(Matching matching) {
        if (matching instanceof Matching.Within within) {
            return Optional.of(
                    Canonical.kind("within").put("difference", FigureWriter.quantity("amount", within.difference())));
        }
        return matching instanceof Matching.Alike ? Optional.of(Canonical.kind("alike")) : Optional.empty();
    }

    private static Canonical treatment(Treatment treatment) {
        return Canonical.kind(treatment.kind().words())
                .put("tissue", treatment.tissue())
                .putUnlessEmpty("reason", treatment.reason());
    }

    static Canonical otherName(OtherName other) {
        return Canonical.fields().put("name", other.name()).putUnlessEmpty("regions", other.regions());
    }

    static Canonical reference(Reference reference) {
        return Canonical.fields()
                .put("scheme", reference.scheme())
                .put("number", reference.number())
                .putUnlessEmpty("edition", reference.edition())
                .putUnlessEmpty("but", reference.but())
                .putUnlessEmpty("range", reference.range())
                .putUnlessEmpty("rules", reference.rules().words())
                .putUnlessEmpty("sources", reference.sources());
    }

    private static Canonical separation(Separation separation) {
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
        if (landmark instanceof Landmark.AtDistance distance) {
            return Optional.of(
                    Canonical.kind("at distance").putUnlessEmpty("ends", distance.ends(), DescriptionWriter::end));
        }
        if (landmark instanceof Landmark.ParallelTo parallel) {
            return Optional.of(Canonical.kind("parallel to").put("line", parallel.line()));
        }
        if (landmark instanceof Landmark.RightAnglesTo across) {
            return Optional.of(Canonical.kind("at right angles to").put("line", across.line()));
        }
        return landmark instanceof Landmark.InWords free
                ? Optional.of(Canonical.kind("in words").put("words", free.words()))
                : Optional.empty();
    }

    private static Canonical end(Landmark.End end) {
        return FigureWriter.quantity(end.atMost() ? "atMost" : "distance", end.distance())
                .put("from", end.from())
                .putUnlessEmpty("at", end.at());
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
