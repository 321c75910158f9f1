package dev.gambrel.tree.rules.anatomy;

import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Visible;
import dev.gambrel.quantity.Expected;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.Share;
import dev.gambrel.tree.Source;
import dev.gambrel.tree.anatomy.Piece;
import dev.gambrel.tree.anatomy.Piece.Published;
import dev.gambrel.tree.inspection.Inspection;
import dev.gambrel.tree.inspection.PieceIndex;
import dev.gambrel.tree.inspection.Rule;
import dev.gambrel.tree.inspection.Site;
import dev.gambrel.tree.inspection.TreeCode;
import dev.gambrel.tree.rules.mass.KnownBases;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A cut's share, give or take two of its standard deviations, touches what print says of that piece on the same basis,
 * each figure taken as rounded to its last digit. One figure alone is no range, and what is only remembered is not print:
 * neither is held against a cut.
 */
public final class PublishedShares implements Rule {
    /**
     * How far one animal's yield may lie from a table's: 5 % of the table's value (Michigan State University Extension,
     * Preserving Food Safely, weights of cuts to expect).
     */
    private static final double INDIVIDUAL_VARIATION = 0.05;

    /** So many figures, and so many sources of each, are told; of more it is said how many there are. */
    private static final int MOST_TOLD = 8;

    @Override
    public void check(Inspection inspection, Consumer<Diagnostic> found) {
        Map<TradeName, Source> sources = new HashMap<>();
        inspection.tree().sources().forEach(source -> sources.putIfAbsent(source.name(), source));
        Map<Piece, List<Print>> inPrint = new IdentityHashMap<>();
        for (Site site : inspection.sites()) {
            site.piece()
                    .map(PieceIndex.Known::piece)
                    .map(piece -> inPrint.computeIfAbsent(piece, p -> Print.of(p, sources)))
                    .ifPresent(prints -> prints.forEach(print -> checkBase(site, print, inspection, sources, found)));
        }
    }

    /** What is in print of one piece as a share of one other, with the ends of all its figures. */
    private record Print(TradeName base, List<Published> figures, Quantity low, Quantity high) {
        static List<Print> of(Piece piece, Map<TradeName, Source> sources) {
            Map<TradeName, List<Published>> byBase = piece.published().stream()
                    .filter(figure -> isPrinted(figure, sources))
                    .collect(Collectors.groupingBy(Published::of, LinkedHashMap::new, Collectors.toList()));
            return byBase.entrySet().stream()
                    .map(entry -> new Print(
                            entry.getKey(), entry.getValue(), lowest(entry.getValue()), highest(entry.getValue())))
                    .toList();
        }

        private static boolean isPrinted(Published figure, Map<TradeName, Source> sources) {
            return figure.sources().stream()
                    .map(sources::get)
                    .anyMatch(source -> source != null && source.kind() == Source.Kind.PUBLISHED);
        }

        boolean isRange() {
            return figures.size() > 1 || figures.get(0).expected() instanceof Expected.CentralRange;
        }
    }

    private static void checkBase(
            Site site, Print print, Inspection inspection, Map<TradeName, Source> sources, Consumer<Diagnostic> found) {
        if (!print.isRange()) {
            return;
        }
        Optional<Double> share = baseSite(site, print.base(), inspection).flatMap(site::shareOf);
        if (share.filter(fraction -> fraction <= 1).isPresent()) {
            double percent = share.get() * 100;
            double own = 2 * percent * Math.max(0, relativeSpread(site));
            if (percent + own < print.low().value() - margin(print.low())
                    || percent - own > print.high().value() + margin(print.high())) {
                found.accept(outside(site, percent, print, sources));
            }
        }
    }

    /** Two of the house's own standard deviations are allowed for: print is a few means, not a range of carcasses. */
    private static double relativeSpread(Site site) {
        if (!(site.cut().share() instanceof Share.Stated stated)
                || stated.expected().mean() <= 0) {
            return 0;
        }
        return stated.expected().standardDeviation().orElse(0)
                / stated.expected().mean();
    }

    private static Optional<Site> baseSite(Site site, TradeName base, Inspection inspection) {
        if (base.equals(KnownBases.CARCASS)) {
            return site.upward().stream().filter(Site::isCarcass).findFirst();
        }
        return inspection
                .pieces()
                .piece(base)
                .flatMap(wanted -> site.upward().stream()
                        .filter(s -> s != site
                                && s.piece()
                                        .filter(known -> known.piece() == wanted.piece())
                                        .isPresent())
                        .findFirst());
    }

    private static Diagnostic outside(Site site, double percent, Print print, Map<TradeName, Source> sources) {
        Diagnostic finding = Diagnostic.of(TreeCode.OUTSIDE_PUBLISHED, site.at(Aspect.SHARE))
                .with("cut", site.name())
                .with(
                        "share",
                        Quantity.rounded(new BigDecimal(percent).setScale(2, RoundingMode.HALF_UP), Unit.PERCENT))
                .with("base", print.base())
                .with("low", print.low())
                .with("high", print.high());
        List<Published> figures = print.figures();
        for (Published figure : figures.subList(0, Math.min(figures.size(), MOST_TOLD))) {
            finding = finding.note(figure.expected() + " of " + print.base() + ": " + cited(figure, sources));
        }
        if (figures.size() > MOST_TOLD) {
            finding = finding.note("There are " + (figures.size() - MOST_TOLD) + " more.");
        }
        finding = finding.note("A twentieth of a figure, and two of the house's own spreads, are allowed for.");
        return finding.help(
                "Check where the cut is made and what is left on it; if the house does cut it so, say so: allow outside-published \"the reason\"");
    }

    private static String cited(Published figure, Map<TradeName, Source> sources) {
        return figure.sources().stream()
                .limit(MOST_TOLD)
                .map(name -> sources.containsKey(name)
                        ? Visible.text(sources.get(name).citation())
                        : name.text())
                .collect(Collectors.joining("; "));
    }

    /** The two ends of a figure as printed; the same where it is no range. */
    private record Ends(Quantity low, Quantity high) {
        static Ends of(Expected expected) {
            if (expected instanceof Expected.CentralRange range) {
                return new Ends(range.low(), range.high());
            } else if (expected instanceof Expected.PlusMinus spread) {
                return new Ends(spread.value(), spread.value());
            }
            Quantity value = ((Expected.Mean) expected).value();
            return new Ends(value, value);
        }
    }

    private static Quantity lowest(List<Published> figures) {
        return ends(figures).map(Ends::low).min(Comparator.naturalOrder()).orElseThrow();
    }

    private static Quantity highest(List<Published> figures) {
        return ends(figures).map(Ends::high).max(Comparator.naturalOrder()).orElseThrow();
    }

    private static Stream<Ends> ends(List<Published> figures) {
        return figures.stream().map(figure -> Ends.of(figure.expected()));
    }

    /** Half of the last digit printed, or a twentieth of the figure if that is more. */
    private static double margin(Quantity figure) {
        return Math.max(0.5 * Math.pow(10, -figure.amount().scale()), INDIVIDUAL_VARIATION * figure.value())
                + Site.ROUNDING;
    }
}
