package dev.gambrel.references.ranges;

/**
 * One range.
 *
 * @param name such as "B", or what it belongs to, such as "carcass 20 to 24 kg"
 * @param bounds from where to where
 */
public record PieceRange(String name, Bounds bounds) {
    @Override
    public String toString() {
        return name + " (" + bounds + ")";
    }
}
