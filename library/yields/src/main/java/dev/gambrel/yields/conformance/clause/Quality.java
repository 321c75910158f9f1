package dev.gambrel.yields.conformance.clause;

/** What a clause is about. */
public enum Quality {
    /** What the carcass weighs. */
    CARCASS_WEIGHT("carcass weight"),
    /** What is on and off the carcass. */
    DRESSING("dressing"),
    /** Bone in, part boned or boneless. */
    BONE_STATE("bone"),
    /** How many ribs a piece has. */
    RIB_COUNT("ribs"),
    /** Where the cut is parted from its neighbours. */
    PARTING("where it is parted"),
    /** By how much left and right may differ. */
    MATCHING("pair"),
    /** Its number in a published scheme. */
    NUMBER("reference number"),
    /** Fat cover over the whole. */
    FAT_AVERAGE("fat on average"),
    /** Fat cover anywhere. */
    FAT_AT_ANY_POINT("fat at any point"),
    /** How fat is left: planed, practically free. */
    FAT_FINISH("fat"),
    /** A tissue that is removed, scored or left. */
    TISSUE("tissue"),
    /** What one piece weighs. */
    WEIGHT("weight of a piece"),
    /** How thick one piece is. */
    THICKNESS("thickness"),
    /** How lean the meat is. */
    LEAN("lean"),
    /** How many portions there are at the least. */
    FEWEST("number"),
    /** Chilled or frozen. */
    REFRIGERATION("cold"),
    /** How cold it is kept. */
    TEMPERATURE("temperature"),
    /** How long it is aged. */
    AGE("age"),
    /** How long it still keeps. */
    LIFE("life left"),
    /** What it is packed in. */
    PACK("pack"),
    /** What is claimed of it. */
    CLAIM("claim"),
    /** What its label tells. */
    LABEL("label");

    private final String words;

    Quality(String words) {
        this.words = words;
    }

    /**
     * In print.
     *
     * @return for example "fat at any point"
     */
    public String words() {
        return words;
    }

    /**
     * Whether what is laid down of a cut, or of everything, holds for all that is cut from it.
     *
     * @return true for cold, age, life, pack, claims and labels
     */
    public boolean isInherited() {
        return switch (this) {
            case REFRIGERATION, TEMPERATURE, AGE, LIFE, PACK, CLAIM, LABEL -> true;
            default -> false;
        };
    }
}
