package dev.gambrel.tree.anatomy;

import dev.gambrel.text.TradeName;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * What a cutter must know of an animal: its bones and where they lie, its pieces by name, and what is published of them.
 *
 * @param name the species
 * @param otherNames what it is called elsewhere
 * @param ribs how many pairs of ribs
 * @param vertebrae how many vertebrae of each region; a region that is missing is not stated
 * @param pieces the pieces that the carcass is divided into, and theirs
 */
public record Species(
        TradeName name,
        List<OtherName> otherNames,
        AnatomicalCount ribs,
        Map<SpineRegion, AnatomicalCount> vertebrae,
        List<Piece> pieces) {
    /** Copies the lists and the map. */
    public Species {
        otherNames = List.copyOf(otherNames);
        vertebrae = Collections.unmodifiableMap(new TreeMap<>(vertebrae));
        pieces = List.copyOf(pieces);
    }

    /**
     * A species of which nothing but the name is known: no rule of anatomy speaks of it.
     *
     * @param name the species
     * @return the bare species
     */
    public static Species unknown(TradeName name) {
        return new Species(name, List.of(), AnatomicalCount.NOT_STATED, Map.of(), List.of());
    }
}
