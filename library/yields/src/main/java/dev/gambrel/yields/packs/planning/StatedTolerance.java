package dev.gambrel.yields.packs.planning;

import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.tree.Portion;
import dev.gambrel.tree.portion.Limit;
import dev.gambrel.yields.figure.Estimate;
import dev.gambrel.yields.packs.rule.PortionTolerances;
import dev.gambrel.yields.packs.rule.Tolerance;
import dev.gambrel.yields.packs.rule.ToleranceTable;
import dev.gambrel.yields.portions.PortionWeight;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * What a house accepts of a portion, held against what a published table accepts of one so heavy or so thick.
 *
 * @param published the published tolerance either way
 * @param accepted the least and the most that the house accepts
 */
public record StatedTolerance(Tolerance published, Limit accepted) {
    /** How a written tolerance stands to a published one. */
    public enum Width {
        /** It accepts less. */
        TIGHTER,
        /** It accepts the same. */
        SAME,
        /** It accepts more. */
        WIDER,
        /** Nothing is written. */
        NOT_STATED
    }

    /**
     * Checks the dimension.
     *
     * @throws IllegalArgumentException if the limit is of something else than the portion
     */
    public StatedTolerance {
        accepted.measuring(published.nominal().dimension());
    }

    /**
     * Holds a written tolerance against a table.
     *
     * @param table of weights or of thicknesses
     * @param aim the portion weight or thickness that is ordered
     * @param accepted the least and the most that the house accepts
     * @return both, or nothing where the table says nothing of such a portion
     */
    public static Optional<StatedTolerance> of(ToleranceTable table, Quantity aim, Limit accepted) {
        return table.at(aim).map(published -> new StatedTolerance(published, accepted));
    }

    /**
     * Holds what is accepted of a portion against the tables of {@link PortionTolerances}.
     *
     * @param portion a portion of a specification
     * @return by weight and by thickness, as far as each is aimed at
     */
    public static List<StatedTolerance> of(Portion portion) {
        Optional<StatedTolerance> byWeight = portion.aim()
                .targetWeight()
                .flatMap(weight -> of(
                        PortionTolerances.WEIGHT,
                        Quantity.rounded(weight.exactMean(), Unit.KILOGRAM),
                        portion.acceptance().weight()));
        Optional<StatedTolerance> byThickness = portion.aim()
                .targetThickness()
                .flatMap(thickness -> of(
                        PortionTolerances.THICKNESS,
                        Quantity.rounded(thickness.exactMean(), Unit.MILLIMETRE),
                        portion.acceptance().thickness()));
        return Stream.of(byWeight, byThickness).flatMap(Optional::stream).toList();
    }

    /**
     * Below what is ordered.
     *
     * @return how the least that is accepted stands to the published one
     */
    public Width below() {
        return width(accepted.least().map(low -> published.nominal().common().subtract(low.common())));
    }

    /**
     * Above what is ordered.
     *
     * @return how the most that is accepted stands to the published one
     */
    public Width above() {
        return width(accepted.most()
                .map(high -> high.common().subtract(published.nominal().common())));
    }

    private Width width(Optional<BigDecimal> written) {
        if (accepted instanceof Limit.NotStated) {
            return Width.NOT_STATED;
        }
        int compared = written.map(width -> width.compareTo(published.amount().common()))
                .orElse(1);
        return compared > 0 ? Width.WIDER : compared < 0 ? Width.TIGHTER : Width.SAME;
    }

    /**
     * Both sides together.
     *
     * @return wider if either side is, else tighter if either side is
     */
    public Width width() {
        if (below() == Width.WIDER || above() == Width.WIDER) {
            return Width.WIDER;
        }
        return below() == Width.SAME ? above() : below();
    }

    /**
     * The published tolerance as a limit.
     *
     * @return from what is ordered less the tolerance to what is ordered and the tolerance
     */
    public Limit publishedLimit() {
        return new Limit.Between(published.firstLimit(), published.upperLimit());
    }

    /**
     * The share of portions within the published tolerance.
     *
     * @param cut how portions come out, in the unit of comparison: kilograms or millimetres
     * @return from 0 to 1, or nothing where no spread is stated
     */
    public OptionalDouble shareWithinPublished(Estimate cut) {
        return share(cut, publishedLimit());
    }

    /**
     * The share of portions that the house accepts.
     *
     * @param cut how portions come out, in the unit of comparison: kilograms or millimetres
     * @return from 0 to 1, or nothing where no spread or nothing accepted is stated
     */
    public OptionalDouble shareAccepted(Estimate cut) {
        return share(cut, accepted);
    }

    private static OptionalDouble share(Estimate cut, Limit limit) {
        return PortionWeight.of(cut).map(portion -> portion.shareWithin(limit)).orElse(OptionalDouble.empty());
    }
}
