package dev.gambrel.yields.lean;

import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.tree.Home;
import dev.gambrel.tree.SourceLean;
import dev.gambrel.tree.Stream;
import dev.gambrel.tree.term.Judged;
import dev.gambrel.yields.ExpectedYields;
import dev.gambrel.yields.YieldRow;
import dev.gambrel.yields.figure.Estimate;
import dev.gambrel.yields.figure.Ratio;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;

/**
 * Works out how lean each stream comes out.
 *
 * <p>The lean of a stream is the ratio of two linear figures of the tree, its lean weight over its weight; all weights vary
 * together as the shares do. How far the lean of each source itself strays is taken as independent of the weights and of the
 * other sources: with p the part of a source in the stream it adds Σ E[p²] Var[lean] (law of total variance). O(nodes) for each
 * source.
 */
public final class StreamLeans {
    private final ExpectedYields yields;
    private final Function<YieldRow, Optional<Lean>> leanOf;

    private StreamLeans(ExpectedYields yields, Function<YieldRow, Optional<Lean>> leanOf) {
        this.yields = yields;
        this.leanOf = leanOf;
    }

    /**
     * How lean each stream of a carcass comes out, by what the specification says of the lean of its sources.
     *
     * @param yields what the carcass should give
     * @return every stream declared, in the order declared
     */
    public static List<StreamLean> of(ExpectedYields yields) {
        return of(yields, StreamLeans::written);
    }

    private static Optional<Lean> written(YieldRow row) {
        return row.home()
                .filter(home -> home instanceof Home.ToStream to && to.lean() instanceof SourceLean.Stated)
                .map(home -> (SourceLean.Stated) ((Home.ToStream) home).lean())
                .map(lean -> new Lean(Estimate.of(lean.percent()), lean.judged()));
    }

    /**
     * How lean each stream of a carcass comes out, where somebody says how lean its sources are.
     *
     * @param yields what the carcass should give
     * @param leanOf how lean a line is that goes to a stream, or nothing where that is not known; always the same answer for
     *     the same line
     * @return every stream declared, in the order declared
     */
    public static List<StreamLean> of(ExpectedYields yields, Function<YieldRow, Optional<Lean>> leanOf) {
        return new StreamLeans(yields, leanOf).all();
    }

    private List<StreamLean> all() {
        Map<String, List<YieldRow>> sources = new LinkedHashMap<>();
        for (YieldRow row : yields.rows()) {
            stream(row)
                    .ifPresent(key ->
                            sources.computeIfAbsent(key, k -> new ArrayList<>()).add(row));
        }
        return yields.streams().stream()
                .map(each -> each.stream())
                .map(stream -> new StreamLean(
                        stream, found(stream, sources.getOrDefault(stream.name().key(), List.of()))))
                .toList();
    }

    private static Optional<String> stream(YieldRow row) {
        return row.home()
                .filter(Home.ToStream.class::isInstance)
                .map(home -> ((Home.ToStream) home).stream().key());
    }

    private StreamLean.Found found(Stream stream, List<YieldRow> sources) {
        List<TreePath> noLean = paths(sources, row -> leanOf.apply(row).isEmpty());
        List<TreePath> noWeight = paths(sources, row -> row.allPieces().isEmpty());
        if (!noLean.isEmpty() || !noWeight.isEmpty()) {
            return new StreamLean.Found.NotStated(noLean, noWeight);
        }
        Estimate weight = yields.figure(counted(stream, row -> 1));
        if (!(weight.mean() > 0)) {
            return new StreamLean.Found.Nothing();
        }
        Judged judged = lean(sources.get(0)).judged();
        for (YieldRow row : sources) {
            if (lean(row).judged() != judged) {
                return new StreamLean.Found.JudgedApart(sources.get(0).path(), row.path());
            }
        }
        return new StreamLean.Found.Known(ratio(stream, weight), ofLeans(stream, sources, weight.mean()), judged);
    }

    private static List<TreePath> paths(List<YieldRow> rows, Predicate<YieldRow> wanted) {
        return rows.stream().filter(wanted).map(YieldRow::path).toList();
    }

    private Ratio ratio(Stream stream, Estimate weight) {
        double mean = weight.mean();
        double leanWeight = yields.figure(
                        counted(stream, row -> lean(row).percent().mean()))
                .mean();
        double ofMeans = leanWeight / mean;
        ToDoubleFunction<YieldRow> gap =
                counted(stream, row -> lean(row).percent().mean() - ofMeans);
        double square = mean * mean;
        return new Ratio(
                ofMeans,
                yields.figure(gap).spread().variance() / square,
                orNaN(yields.covariance(gap, counted(stream, row -> 1))) / square,
                weight.spread().variance() / square);
    }

    /** What the spread of the leans themselves brings in: Σ E[p²] Var[lean], E[p²] = (E p)² + Var[w - E[p] W] / E[W]². */
    private double ofLeans(Stream stream, List<YieldRow> sources, double mean) {
        double sum = 0;
        for (YieldRow row : sources) {
            double part = row.allPieces().orElse(Estimate.exactly(0)).mean() / mean;
            double variance = lean(row).percent().spread().variance();
            if (part > 0 && variance != 0) {
                ToDoubleFunction<YieldRow> gap = counted(stream, other -> (isSame(row, other) ? 1 : 0) - part);
                sum += variance * (part * part + yields.figure(gap).spread().variance() / (mean * mean));
            }
        }
        return sum;
    }

    /** A path may be that of a cut and of what is left of it once trimmed; only an end goes to a stream. */
    private static boolean isSame(YieldRow source, YieldRow other) {
        return source.path().equals(other.path());
    }

    private static double orNaN(OptionalDouble value) {
        return value.orElse(Double.NaN);
    }

    private Lean lean(YieldRow source) {
        return leanOf.apply(source).orElseThrow();
    }

    private static ToDoubleFunction<YieldRow> counted(Stream stream, ToDoubleFunction<YieldRow> coefficient) {
        String key = stream.name().key();
        return row -> stream(row).filter(key::equals).isPresent() ? coefficient.applyAsDouble(row) : 0;
    }
}
