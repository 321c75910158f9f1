package dev.gambrel.yields.comparison.fact;

import dev.gambrel.tree.Landmark;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Where a cut is parted from what lies beside it. */
final class LandmarkWords {
    private LandmarkWords() {}

    static List<String> value(Landmark landmark) {
        if (landmark instanceof Landmark.At at) {
            return List.of("at", at.place().key());
        } else if (landmark instanceof Landmark.Along along) {
            return List.of("along", along.line().key());
        } else if (landmark instanceof Landmark.ParallelTo parallel) {
            return List.of("parallel", parallel.line().key());
        } else if (landmark instanceof Landmark.RightAnglesTo across) {
            return List.of("across", across.line().key());
        } else if (landmark instanceof Landmark.AtDistance distance) {
            return Stream.concat(
                            Stream.of("at a distance"), distance.ends().stream().flatMap(LandmarkWords::value))
                    .toList();
        }
        return List.of(of(landmark));
    }

    private static Stream<String> value(Landmark.End end) {
        return Stream.of(
                end.atMost() ? "at most" : "exactly",
                Exact.of(end.distance()),
                end.from().key(),
                end.at());
    }

    static String of(Landmark landmark) {
        if (landmark instanceof Landmark.Between between) {
            return "between " + between.first() + " and " + between.second();
        } else if (landmark instanceof Landmark.Ribs ribs) {
            return "ribs " + ribs.first() + " to " + ribs.last();
        } else if (landmark instanceof Landmark.At at) {
            return "at " + at.place();
        } else if (landmark instanceof Landmark.Along along) {
            return "along " + along.line();
        } else if (landmark instanceof Landmark.ParallelTo parallel) {
            return "parallel to " + parallel.line();
        } else if (landmark instanceof Landmark.RightAnglesTo across) {
            return "at right angles to " + across.line();
        } else if (landmark instanceof Landmark.AtDistance distance) {
            return distance.ends().stream().map(LandmarkWords::of).collect(Collectors.joining(" and "));
        }
        return landmark instanceof Landmark.InWords free ? "“" + free.words() + "”" : "";
    }

    private static String of(Landmark.End end) {
        return (end.atMost() ? "at most " : "") + end.distance() + " from " + end.from()
                + (end.at().isEmpty() ? "" : " at " + end.at());
    }
}
