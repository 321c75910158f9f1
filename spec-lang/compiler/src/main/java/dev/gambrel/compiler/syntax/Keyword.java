package dev.gambrel.compiler.syntax;

import static dev.gambrel.compiler.syntax.Container.CUT;
import static dev.gambrel.compiler.syntax.Container.FILE;
import static dev.gambrel.compiler.syntax.Container.PIECE;
import static dev.gambrel.compiler.syntax.Container.SPECIES;

import dev.gambrel.text.TradeName;
import java.util.List;
import java.util.Optional;

/** The word that a statement starts with, how such a line goes, and where it may stand. */
public enum Keyword {
    /** The version of the language. */
    LANGUAGE_LINE("language", "language 1", FILE),
    /** Names the file that this one changes. */
    REVISES_LINE("revises", "revises \"hogget.cuts\"", FILE),
    /** Lines that a revision adds. */
    ADD_LINE("add", "add {", FILE, CUT, SPECIES, PIECE),
    /** A line that a revision leaves out. */
    OMIT_LINE("omit", "omit NAME, difference to rest", FILE, CUT, SPECIES, PIECE),
    /** Takes in another file or a part of the catalogue. */
    USE_LINE("use", "use \"catalogue:sheep\"", FILE),
    /** What figures rest on. */
    SOURCE_LINE("source", "source NAME, published \"where it is printed\"", FILE),
    /** Title, revision and species. */
    SPECIFICATION_LINE("specification", "specification \"TITLE\" revision 1 for SPECIES", FILE),
    /** Title and revision of what a buyer asks, and the species. */
    REQUIREMENT_LINE("requirement", "requirement \"TITLE\" revision 1 for SPECIES", FILE),
    /** The carcass that the shares hold for. */
    CARCASS_LINE("carcass", "carcass cold, skin off, 20 kg to 24 kg", FILE),
    /** What is lost between two weighings. */
    FROM_LINE("from", "from warm to cold, loss chill shrink 2 % ± 0.4 %", FILE),
    /** A tub for trim. */
    STREAM_LINE("stream", "stream NAME, saleable, lean 85 % visual", FILE),
    /** A class that carcasses fall into. */
    GRADE_LINE("grade", "grade NAME, VALUE, VALUE", FILE),
    /** A piece of meat. */
    CUT_LINE("cut", "cut NAME 15 % ± 0.8 %, two per carcass, boneless -> STREAM", FILE, CUT),
    /** A way in which a cut is worked. */
    WORKED_LINE("worked", "worked as NAME, as a rule -> STREAM", FILE, CUT),
    /** A bone taken out, or a bone of a species. */
    BONE_LINE("bone", "bone NAME 7 % ± 0.4 % -> STREAM", FILE, CUT, PIECE),
    /** A muscle of a species. */
    MUSCLE_LINE("muscle", "muscle NAME, also OTHER NAME", PIECE),
    /** A gland of a species. */
    GLAND_LINE("gland", "gland NAME, also OTHER NAME", PIECE),
    /** Fat taken down to a cover. */
    TRIM_LINE("trim", "trim fat to at most 3 mm at any point 4 % ± 1 % -> STREAM", FILE, CUT),
    /** Tissue taken off. */
    REMOVE_LINE("remove", "remove silverskin 1.5 % ± 0.3 % -> STREAM", FILE, CUT),
    /** Edges cut straight. */
    SQUARE_LINE("square", "square off 7 % ± 1 % -> STREAM", CUT),
    /** Weight that is gone. */
    LOSS_LINE("loss", "loss saw 0.5 % ± 0.1 %", FILE, CUT),
    /** What the other parts leave. */
    REST_LINE("rest", "rest -> STREAM", FILE, CUT),
    /** Portions by weight, thickness or number. */
    PORTION_LINE("portion", "portion NAME 180 g, between 170 g and 190 g, remainder -> STREAM", CUT),
    /** How a cut is parted from its neighbours. */
    SEPARATE_LINE("separate", "separate by knife and saw between rib 5 and rib 6", CUT),
    /** A number in a published scheme. */
    REFERENCE_LINE("reference", "reference UNECE 4800 edition 2006", CUT, PIECE),
    /** Free words. */
    NOTE_LINE("note", "note \"any words\"", FILE, CUT),
    /** Bones and muscles in a cut. */
    CONTAINS_LINE("contains", "contains NAME, NAME", CUT),
    /** A warning that is accepted. */
    ALLOW_LINE("allow", "allow outside-published \"why it is accepted\"", FILE, CUT),
    /** An animal. */
    SPECIES_LINE("species", "species NAME, also OTHER NAME {", FILE),
    /** How many pairs of ribs. */
    RIBS_LINE("ribs", "ribs 13", SPECIES),
    /** How many vertebrae of a region. */
    VERTEBRAE_LINE("vertebrae", "vertebrae lumbar 6 to 7", SPECIES),
    /** A piece of an animal that the trade knows. */
    PIECE_LINE("piece", "piece NAME, two per carcass, also OTHER NAME (US) {", SPECIES, PIECE),
    /** Tissue cut through in lines and left on. */
    SCORE_LINE("score", "score silverskin", CUT),
    /** Tissue left as it is. */
    LEAVE_LINE("leave", "leave silverskin \"why\"", CUT),
    /** Something measured on the carcass. */
    MEASURE_LINE("measure", "measure NAME, in mm, \"where it is taken\", 5 mm to 40 mm", FILE),
    /** An estimate by equation. */
    ESTIMATE_LINE("estimate", "estimate NAME = 71.5 % - 0.84 % per mm × back fat, source NAME", FILE),
    /** What a piece weighs. */
    WEIGHT_LINE("weight", "weight between 600 g and 800 g, at most 1 in 20 outside", CUT),
    /** How thick a piece is. */
    THICKNESS_LINE("thickness", "thickness at least 20 mm", CUT),
    /** How lean the meat is. */
    LEAN_LINE("lean", "lean at least 95 % visual", CUT),
    /** How it is kept. */
    KEEP_LINE("keep", "keep chilled, at most 3 °C at the centre", FILE, CUT),
    /** How long it is aged. */
    AGE_LINE("age", "age at least 7 days from kill, on the bone", FILE, CUT),
    /** How long it still keeps. */
    LIFE_LINE("life", "life at least 14 days", FILE, CUT),
    /** What it is packed in. */
    PACK_LINE("pack", "pack two to a vacuum bag", FILE, CUT),
    /** What is claimed of it. */
    CLAIM_LINE("claim", "claim NAME, NAME", FILE, CUT),
    /** What its label tells. */
    LABEL_LINE("label", "label NAME, NAME", FILE, CUT),
    /** A published share of a piece. */
    PUBLISHED_LINE("published", "published 32 % of carcass, source NAME", PIECE);

    private final String word;
    private final String form;
    private final List<Container> containers;

    Keyword(String word, String form, Container... containers) {
        this.word = word;
        this.form = form;
        this.containers = List.of(containers);
    }

    /**
     * The word itself.
     *
     * @return one word in small letters
     */
    public String word() {
        return word;
    }

    /**
     * How such a line goes.
     *
     * @return an example with names in capitals to be filled in
     */
    public String form() {
        return form;
    }

    /**
     * Whether such a line may stand somewhere.
     *
     * @param container what it stands in
     * @return true if it may
     */
    public boolean fits(Container container) {
        return containers.contains(container);
    }

    /**
     * Whether such a line may have braces that hold others.
     *
     * @return true for a cut, a way of working, a species, a piece and what is added
     */
    public boolean hasBraces() {
        return switch (this) {
            case CUT_LINE, WORKED_LINE, SPECIES_LINE, PIECE_LINE, ADD_LINE -> true;
            default -> false;
        };
    }

    /**
     * Whether such a line lays down terms of supply.
     *
     * @return true for weight, thickness, lean, keep, age, life, pack, claim and label
     */
    public boolean isOfSupply() {
        return switch (this) {
            case WEIGHT_LINE,
                    THICKNESS_LINE,
                    LEAN_LINE,
                    KEEP_LINE,
                    AGE_LINE,
                    LIFE_LINE,
                    PACK_LINE,
                    CLAIM_LINE,
                    LABEL_LINE -> true;
            default -> false;
        };
    }

    /**
     * Whether such a line says what the whole is called.
     *
     * @return true for a specification and a requirement
     */
    public boolean isTitle() {
        return this == SPECIFICATION_LINE || this == REQUIREMENT_LINE;
    }

    /**
     * Where such a line may stand, in words.
     *
     * @return for example "in the braces of a cut"
     */
    public String whereItFits() {
        return String.join(" or ", containers.stream().map(Container::where).toList());
    }

    /**
     * The keyword that somebody wrote.
     *
     * @param text any word
     * @return the keyword, or nothing
     */
    public static Optional<Keyword> of(String text) {
        for (Keyword keyword : values()) {
            if (keyword.word.equalsIgnoreCase(text)) {
                return Optional.of(keyword);
            }
        }
        return "carcase".equalsIgnoreCase(text) ? Optional.of(CARCASS_LINE) : Optional.empty();
    }

    /**
     * All keywords as names, to find the nearest.
     *
     * @return in the order of declaration
     */
    public static List<TradeName> names() {
        return List.of(values()).stream().map(k -> TradeName.of(k.word)).toList();
    }
}
