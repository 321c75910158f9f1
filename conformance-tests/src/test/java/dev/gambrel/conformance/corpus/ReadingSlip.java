package dev.gambrel.conformance.corpus;

import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.text.TradeName;
import dev.gambrel.yields.estimate.Measurements;
import java.util.function.UnaryOperator;

/** One slip in what is given as measured, for a hogget whose legs are estimated from back fat and eye depth. */
enum ReadingSlip {
    NOTHING_MEASURED("G1320", given -> Measurements.NONE.with(name("eye depth"), mm("28"))),
    FAT_OUTSIDE_ITS_RANGE("G1321", given -> given.with(name("back fat"), mm("21"))),
    EYE_DEPTH_THAT_THE_ESTIMATE_DOES_NOT_HOLD_FOR("G1321", given -> given.with(name("eye depth"), mm("45"))),
    FAT_BY_A_NAME_MISSPELT("G1322", given -> given.with(name("bak fat"), mm("6"))),
    FAT_WITHOUT_ITS_UNIT("G1323", given -> given.with(name("back fat"), Quantity.of("6", Unit.NUMBER))),
    FAT_IN_KILOGRAMS("G1323", given -> given.with(name("back fat"), Quantity.of("6", Unit.KILOGRAM))),
    SCORE_NOT_ON_THE_SCALE("G1323", given -> given.with(name("muscling"), name("round"))),
    SCORE_ABOVE_THE_SCALE("G1323", given -> given.with(name("muscling"), Quantity.of("4", Unit.NUMBER))),
    EYE_DEPTH_OF_NOTHING("G1324", given -> given.with(name("eye depth"), mm("0"))),
    EYE_DEPTH_LEFT_OUT("G1325", given -> Measurements.NONE.with(name("back fat"), mm("6"))),
    FAT_OF_THOUSANDS_OF_PLACES("G1326", given -> given.with(name("back fat"), mm("1e-9000"))),
    FAT_OF_LESS_THAN_NOTHING("G1323", given -> given.with(name("back fat"), mm("-6"))),
    TOO_FAT_FOR_ANY_CARCASS("G0508", given -> given.with(name("back fat"), mm("200")));

    private final String code;
    private final UnaryOperator<Measurements> slip;

    ReadingSlip(String code, UnaryOperator<Measurements> slip) {
        this.code = code;
        this.slip = slip;
    }

    private static TradeName name(String name) {
        return TradeName.of(name);
    }

    private static Quantity mm(String amount) {
        return Quantity.of(amount, Unit.MILLIMETRE);
    }

    String code() {
        return code;
    }

    /** Sound readings with the one slip. */
    Measurements given() {
        return slip.apply(Measurements.NONE.with(name("back fat"), mm("6")).with(name("eye depth"), mm("28")));
    }

    String fileName() {
        return name().toLowerCase(java.util.Locale.ROOT) + ".expected";
    }
}
