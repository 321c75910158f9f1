package dev.gambrel.tree.anatomy;

import java.util.Locale;
import java.util.Optional;

/** A part of the spine, from head to tail. */
public enum SpineRegion {
    /** Of the neck. */
    CERVICAL,
    /** Of the ribs. */
    THORACIC,
    /** Of the loin. */
    LUMBAR,
    /** Of the sacrum. */
    SACRAL,
    /** Of the tail. */
    CAUDAL;

    /**
     * In print.
     *
     * @return the name in small letters
     */
    public String words() {
        return name().toLowerCase(Locale.ROOT);
    }

    /**
     * The region that somebody wrote.
     *
     * @param text one word, any case
     * @return the region, or nothing if it is not one
     */
    public static Optional<SpineRegion> of(String text) {
        for (SpineRegion region : values()) {
            if (region.words().equals(text.toLowerCase(Locale.ROOT))) {
                return Optional.of(region);
            }
        }
        return Optional.empty();
    }
}
