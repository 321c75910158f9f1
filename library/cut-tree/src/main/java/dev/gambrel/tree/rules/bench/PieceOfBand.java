package dev.gambrel.tree.rules.bench;

import dev.gambrel.tree.Part;
import dev.gambrel.tree.Share;
import dev.gambrel.tree.WeightBand;
import dev.gambrel.tree.inspection.Inspection;
import dev.gambrel.tree.inspection.Site;
import java.util.List;
import java.util.Optional;

/**
 * What one piece of a cut weighs once trimmed, of the carcasses that a specification is for: the mean share of the carcass
 * times the ends of its weight band.
 *
 * @param lightest kilograms, of the lightest carcass
 * @param heaviest kilograms, of the heaviest
 * @param relativeSpread what the spreads stated on the way come to at the most, as a part of the weight
 */
record PieceOfBand(double lightest, double heaviest, double relativeSpread) {
    /** The piece, or nothing where the band or a share on the way is not stated, or makes no part of a carcass. */
    static Optional<PieceOfBand> of(Site site, Inspection inspection) {
        List<Site> upward = site.upward();
        Site carcass = upward.get(upward.size() - 1);
        if (!(inspection.tree().carcass().band() instanceof WeightBand.Stated band) || site.isUnsure()) {
            return Optional.empty();
        }
        double left = 1 - trimmed(site);
        return site.shareOf(carcass)
                .filter(share -> 0 < share * left && share * left <= 1)
                .map(share -> {
                    double one = share * left / pieces(site);
                    return new PieceOfBand(band.low().value() * one, band.high().value() * one, relativeSpread(upward));
                });
    }

    private static double trimmed(Site site) {
        double trimmed = 0;
        for (Part part : site.parts()) {
            if (part.share() instanceof Share.Stated stated) {
                trimmed += stated.expected().mean() / 100;
            }
        }
        return trimmed;
    }

    private static int pieces(Site site) {
        if (site.isCarcass()) {
            return 1;
        }
        int above = pieces(site.above());
        return site.isWay() ? above : site.cut().pieces().perCarcass(above);
    }

    private static double relativeSpread(List<Site> upward) {
        double sum = 0;
        for (Site site : upward) {
            if (!site.isCarcass() && !site.isWay() && site.cut().share() instanceof Share.Stated stated) {
                double mean = stated.expected().mean();
                sum += mean > 0 ? stated.expected().standardDeviation().orElse(0) / mean : 0;
            }
        }
        return sum;
    }
}
