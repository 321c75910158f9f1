package dev.gambrel.yields.estimate;

import dev.gambrel.quantity.Quantity;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.Basis;
import dev.gambrel.tree.inspection.Vocabulary;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * What was measured on one carcass.
 *
 * <pre>{@code
 * Measurements given = Measurements.NONE
 *         .with(TradeName.of("back fat"), Quantity.of("0.4", Unit.INCH))
 *         .with(TradeName.of("muscling"), TradeName.of("thick"))
 *         .weighed(Basis.WARM, Quantity.of("750", Unit.POUND));
 * }</pre>
 *
 * @param readings by name; a carcass weight by such a name as "warm weight"
 */
public record Measurements(Map<TradeName, Reading> readings) {
    /** Nothing was measured. */
    public static final Measurements NONE = new Measurements(Map.of());

    /** Copies the readings; a weight has one name, whatever it was given by. */
    public Measurements {
        Map<TradeName, Reading> copy = new LinkedHashMap<>();
        readings.forEach((name, reading) -> copy.put(plain(name), reading));
        readings = Collections.unmodifiableMap(copy);
    }

    /**
     * With one more figure, or another in its place.
     *
     * @param name the measure
     * @param value what was read
     * @return the fuller measurements
     */
    public Measurements with(TradeName name, Quantity value) {
        return with(name, new Reading.Figure(value));
    }

    /**
     * With one more score, or another in its place.
     *
     * @param name the measure
     * @param score what was judged
     * @return the fuller measurements
     */
    public Measurements with(TradeName name, TradeName score) {
        return with(name, new Reading.Score(score));
    }

    /**
     * With the weight of the carcass on one basis. A weight on another basis is never worked out from it.
     *
     * @param basis what was weighed
     * @param weight what the scale showed
     * @return the fuller measurements
     */
    public Measurements weighed(Basis basis, Quantity weight) {
        return with(name(basis), weight);
    }

    /**
     * With one more reading, or another in its place.
     *
     * @param name the measure
     * @param reading a figure or a score
     * @return the fuller measurements
     */
    public Measurements with(TradeName name, Reading reading) {
        Map<TradeName, Reading> more = new LinkedHashMap<>(readings);
        more.put(plain(name), reading);
        return new Measurements(more);
    }

    /**
     * What was read.
     *
     * @param name a measure or a carcass weight
     * @return the reading, if there is one
     */
    public Optional<Reading> reading(TradeName name) {
        return Optional.ofNullable(readings.get(plain(name)));
    }

    /** "hot carcass weight" and "warm weight" are one. */
    static TradeName plain(TradeName name) {
        return Vocabulary.weight(name).map(Measurements::name).orElse(name);
    }

    private static TradeName name(Basis basis) {
        return TradeName.of(basis.words() + " weight");
    }
}
