package dev.gambrel.compiler.lower;

import dev.gambrel.compiler.code.MeaningCode;
import dev.gambrel.compiler.meaning.Clauses;
import dev.gambrel.compiler.meaning.FigureReader;
import dev.gambrel.compiler.meaning.Located;
import dev.gambrel.compiler.meaning.SpineRegions;
import dev.gambrel.compiler.parse.FileReport;
import dev.gambrel.compiler.syntax.Clause;
import dev.gambrel.compiler.syntax.Name;
import dev.gambrel.compiler.syntax.WrittenLandmark;
import dev.gambrel.compiler.syntax.WrittenLandmark.Point;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.quantity.Dimension;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.text.NearestName;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.Landmark;
import dev.gambrel.tree.Separation;
import dev.gambrel.tree.anatomy.SkeletonPoint;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** How a cut is parted from its neighbours. */
final class SeparationLowering {
    private static final List<TradeName> TOOLS =
            List.of(TradeName.of("knife"), TradeName.of("saw"), TradeName.of("hand"), TradeName.of("cleaver"));
    private static final int MOST_BONES = 99;
    private static final TradeName MOST = TradeName.of("most");
    private static final String RIGHT_ANGLES = "right angles to ";

    private final FileReport report;
    private final FigureReader figures;

    SeparationLowering(FileReport report) {
        this.report = report;
        this.figures = new FigureReader(report);
    }

    Separation separation(Located located) {
        Clauses clauses = new Clauses(located);
        List<String> tools = clauses.one(Clause.Tools.class, "what it is cut with")
                .map(this::tools)
                .orElse(List.of());
        Landmark landmark = clauses.one(Clause.At.class, "where it is cut")
                .flatMap(at -> landmark(at.landmark()))
                .orElse(new Landmark.NotStated());
        clauses.finish();
        return new Separation(tools, landmark);
    }

    Optional<Separation> ribs(Clause.Ribs ribs) {
        return figures.count(ribs.first(), ribs.span(), 1, MOST_BONES)
                .flatMap(first -> figures.count(ribs.last(), ribs.span(), first, MOST_BONES)
                        .map(last -> new Separation(List.of(), new Landmark.Ribs(first, last))));
    }

    private List<String> tools(Clause.Tools written) {
        List<String> tools = new ArrayList<>();
        for (Name tool : written.tools()) {
            if (TOOLS.contains(tool.text())) {
                tools.add(tool.text().key());
            } else {
                Diagnostic finding =
                        report.finding(MeaningCode.UNKNOWN_TOOL, tool.span()).with("tool", tool.text());
                report.add(NearestName.of(tool.text(), TOOLS)
                        .map(near -> report.didYouMean(finding, tool.span(), near))
                        .orElse(finding.help("The tools are knife, saw, hand and cleaver.")));
            }
        }
        return tools;
    }

    private Optional<Landmark> landmark(WrittenLandmark written) {
        if (written instanceof WrittenLandmark.Between between) {
            Optional<SkeletonPoint> second = point(between.second());
            return point(between.first()).flatMap(first -> second.map(last -> new Landmark.Between(first, last)));
        } else if (written instanceof WrittenLandmark.At at) {
            return Optional.of(at(at.place().text()));
        } else if (written instanceof WrittenLandmark.Along along) {
            return Optional.of(new Landmark.Along(along.line().text()));
        } else if (written instanceof WrittenLandmark.Parallel parallel) {
            return Optional.of(new Landmark.ParallelTo(parallel.line().text()));
        } else if (written instanceof WrittenLandmark.Distances distances) {
            return distances(distances.distances());
        }
        return Optional.of(new Landmark.InWords(((WrittenLandmark.InWords) written).words()));
    }

    /** "at right angles to the chine" is a line and no joint. */
    private static Landmark at(TradeName place) {
        return place.key().startsWith(RIGHT_ANGLES)
                ? new Landmark.RightAnglesTo(TradeName.of(after(place.text(), RIGHT_ANGLES.length()), place))
                : new Landmark.At(place);
    }

    /** A name may be longer in the form in which names are compared than as it is written. */
    private static String after(String text, int length) {
        return text.substring(Math.min(length, text.length()));
    }

    private Optional<Landmark> distances(List<WrittenLandmark.Distance> written) {
        List<Landmark.End> ends = new ArrayList<>(2);
        for (WrittenLandmark.Distance distance : written) {
            boolean isRead = distance.limit().stream().allMatch(this::isMost);
            Optional<Quantity> length = figures.quantity(distance.amount(), Dimension.LENGTH);
            if (!isRead || length.isEmpty()) {
                return Optional.empty();
            }
            ends.add(new Landmark.End(
                    length.get(), !distance.limit().isEmpty(), distance.from().text(), distance.at()));
        }
        return Optional.of(new Landmark.AtDistance(ends));
    }

    private boolean isMost(Name word) {
        boolean isMost = word.text().equals(MOST);
        if (!isMost) {
            report.add(report.finding(MeaningCode.NOT_A_LIMIT, word.span())
                    .with("word", word.text())
                    .help("Write at most 40 mm from the eye, or the distance alone: 40 mm from the eye."));
        }
        return isMost;
    }

    private Optional<SkeletonPoint> point(Point point) {
        if (point.region().equals("rib")) {
            return switch (point.which()) {
                case "first" -> Optional.of(new SkeletonPoint.Rib(1));
                case "last" -> Optional.of(new SkeletonPoint.LastRib());
                default ->
                    figures.count(point.which(), point.span(), 1, MOST_BONES).map(SkeletonPoint.Rib::new);
            };
        }
        return SpineRegions.read(point.region(), point.span(), report).flatMap(region -> switch (point.which()) {
            case "first" -> Optional.of(new SkeletonPoint.Vertebra(region, 1));
            case "last" -> Optional.of(new SkeletonPoint.LastVertebra(region));
            default ->
                figures.count(point.which(), point.span(), 1, MOST_BONES)
                        .map(number -> new SkeletonPoint.Vertebra(region, number));
        });
    }
}
