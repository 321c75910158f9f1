package dev.gambrel.yields.conformance.clause;

import dev.gambrel.tree.Landmark;
import java.util.stream.Collectors;

/** Where a cut is made, in words. */
final class LandmarkWords {
    private LandmarkWords() {}

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
            return distance.ends().stream().map(LandmarkWords::end).collect(Collectors.joining(", "));
        }
        return landmark instanceof Landmark.InWords words ? words.words() : "";
    }

    private static String end(Landmark.End end) {
        String most = end.atMost() ? "at most " : "";
        return most + end.distance() + " from " + end.from() + (end.at().isEmpty() ? "" : " at " + end.at());
    }
}
