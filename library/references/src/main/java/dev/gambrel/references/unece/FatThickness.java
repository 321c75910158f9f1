package dev.gambrel.references.unece;

import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import java.util.Optional;

/** How much fat may be on a cut, field 10. This list is of cattle. That a thickness is a limit at any point is from memory. */
public enum FatThickness implements FieldValue {
    /** Not specified. */
    NOT_SPECIFIED(0, "not specified"),
    /** Peeled, denuded, surface membrane removed. */
    SURFACE_MEMBRANE_REMOVED(1, "peeled, denuded, surface membrane removed"),
    /** Peeled, denuded. */
    PEELED(2, "peeled, denuded"),
    /** Practically free. */
    PRACTICALLY_FREE(3, "practically free"),
    /** 3 mm. */
    MM_3(4, "3 mm"),
    /** 6 mm. */
    MM_6(5, "6 mm"),
    /** 13 mm. */
    MM_13(6, "13 mm"),
    /** 25 mm. */
    MM_25(7, "25 mm"),
    /** Chemical lean specified. */
    CHEMICAL_LEAN(8, "chemical lean specified"),
    /** Other. */
    OTHER(9, "other");

    private final int digit;
    private final String words;

    FatThickness(int digit, String words) {
        this.digit = digit;
        this.words = words;
    }

    @Override
    public int digit() {
        return digit;
    }

    @Override
    public String words() {
        return words;
    }

    /**
     * The most fat at any point.
     *
     * @return the thickness, or nothing where the value is none
     */
    public Optional<Quantity> limit() {
        return switch (this) {
            case MM_3 -> millimetres("3");
            case MM_6 -> millimetres("6");
            case MM_13 -> millimetres("13");
            case MM_25 -> millimetres("25");
            default -> Optional.empty();
        };
    }

    private static Optional<Quantity> millimetres(String amount) {
        return Optional.of(Quantity.of(amount, Unit.MILLIMETRE));
    }
}
