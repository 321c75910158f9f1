package dev.gambrel.references.claims;

import dev.gambrel.quantity.Quantity;
import dev.gambrel.references.item.Animal;
import dev.gambrel.references.item.BoneState;
import dev.gambrel.references.item.Item;
import dev.gambrel.references.item.Meaning;
import dev.gambrel.references.ranges.PieceRange;
import dev.gambrel.references.ranges.RangeTable;
import dev.gambrel.references.source.Certainty;
import dev.gambrel.references.source.Citation;
import dev.gambrel.references.unece.Entry;
import dev.gambrel.references.unece.FatThickness;
import dev.gambrel.references.unece.Field;
import dev.gambrel.references.unece.FieldValue;
import dev.gambrel.references.unece.MeatCode;
import dev.gambrel.references.unece.Packing;
import dev.gambrel.references.unece.Refrigeration;
import java.util.List;
import java.util.function.Function;

/**
 * Holds claims against published numbers. What a number does not say, or what is not held of it, is not stated: nothing is concluded
 * from it.
 */
public final class Comparisons {
    private static final String NOTHING = "the number says nothing of it";
    private static final Citation SPECIES =
            new Citation("UNECE Standard Bovine Meat, Carcases and Cuts, section 3.2", "2007", Certainty.SEEN_QUOTED);
    private static final Citation AT_ANY_POINT = new Citation(
            "UNECE Standard Bovine Meat, fat thickness as a limit at any point", "2007", Certainty.FROM_MEMORY);
    private static final Citation TEMPERATURES =
            new Citation("UNECE meat standards, temperatures of field 4", "2007", Certainty.FROM_MEMORY);

    private Comparisons() {}

    /**
     * A claim beside the number of an item.
     *
     * @param item what the number means
     * @param claim what words say
     * @return how they stand to one another; an item says its animal and, where stated, its bone
     */
    public static Comparison of(Item item, Claim claim) {
        if (claim instanceof Claim.OfAnimal of) {
            return animal(item.animal(), of, item.citation());
        } else if (claim instanceof Claim.Bone bone) {
            return bone(item, bone);
        }
        return Comparison.notStated(claim, NOTHING);
    }

    /**
     * A claim beside a meat code.
     *
     * @param code the code
     * @param claim what words say
     * @return how they stand to one another
     */
    public static Comparison of(MeatCode code, Claim claim) {
        if (claim instanceof Claim.OfAnimal of) {
            return animal(code.animal(), of, SPECIES);
        } else if (claim instanceof Claim.Bone bone) {
            return code.meaning() instanceof Meaning.Known known
                    ? bone(known.item(), bone)
                    : Comparison.notStated(claim, "what cut " + code.cut() + " is, is not held");
        } else if (claim instanceof Claim.Kept kept) {
            return field(code, Field.REFRIGERATION, claim, value -> kept((Refrigeration) value, kept.state()));
        } else if (claim instanceof Claim.Packed packed) {
            return field(code, Field.PACKING, claim, value -> packed((Packing) value, packed.packing()));
        } else if (claim instanceof Claim.FatAtAnyPoint || claim instanceof Claim.AverageFat) {
            return field(code, Field.FAT, claim, value -> fat((FatThickness) value, claim));
        }
        return Comparison.notStated(claim, "the range of weights stands beside the code, not in it");
    }

    /**
     * A claim on weight beside a range of an item.
     *
     * @param table the item's ranges
     * @param range the range that the number names
     * @param claim what words say
     * @return how they stand to one another; limits are compared exactly, as printed
     */
    public static Comparison of(RangeTable table, PieceRange range, Claim.PieceWeight claim) {
        return new Comparison(
                WeightComparison.of(range.bounds(), claim), range.toString(), claim, List.of(table.citation()));
    }

    private static Comparison animal(Animal published, Claim.OfAnimal claim, Citation citation) {
        Agreement agreement = published == claim.animal() ? Agreement.AGREES : Agreement.CONTRADICTS;
        return new Comparison(agreement, published.word(), claim, List.of(citation));
    }

    private static Comparison bone(Item item, Claim.Bone claim) {
        if (item.bone() == BoneState.NOT_STATED || claim.state() == BoneState.NOT_STATED) {
            return Comparison.notStated(claim, BoneState.NOT_STATED.words());
        }
        Agreement agreement = item.bone() == claim.state() ? Agreement.AGREES : Agreement.CONTRADICTS;
        return new Comparison(agreement, item.bone().words(), claim, List.of(item.citation()));
    }

    private static Comparison field(
            MeatCode code, Field field, Claim claim, Function<FieldValue, Agreement> comparing) {
        if (!(code.entry(field) instanceof Entry.Meant meant)) {
            return Comparison.notStated(
                    claim,
                    field.words() + " is " + code.entry(field).digit() + ", not verified for "
                            + code.animal().word());
        }
        Agreement agreement = comparing.apply(meant.value());
        if (agreement == Agreement.NOT_STATED) {
            return Comparison.notStated(
                    claim, field.words() + ": " + meant.value().words());
        }
        boolean needsMore =
                field == Field.FAT && ((FatThickness) meant.value()).limit().isPresent();
        boolean needsDegrees = agreement == Agreement.TIGHTER || agreement == Agreement.LOOSER;
        List<Citation> sources = needsMore
                ? List.of(meant.citation(), AT_ANY_POINT)
                : needsDegrees ? List.of(meant.citation(), TEMPERATURES) : List.of(meant.citation());
        return new Comparison(agreement, meant.value().words(), claim, sources);
    }

    /** What is deep-frozen is cold enough for frozen, and not the other way about. */
    private static Agreement kept(Refrigeration published, Refrigeration claimed) {
        if (!isState(published) || !isState(claimed)) {
            return Agreement.NOT_STATED;
        } else if (published == claimed) {
            return Agreement.AGREES;
        } else if (published == Refrigeration.CHILLED || claimed == Refrigeration.CHILLED) {
            return Agreement.CONTRADICTS;
        }
        return claimed == Refrigeration.DEEP_FROZEN ? Agreement.TIGHTER : Agreement.LOOSER;
    }

    private static boolean isState(Refrigeration state) {
        return state != Refrigeration.NOT_SPECIFIED && state != Refrigeration.OTHER;
    }

    private static Agreement packed(Packing published, Packing claimed) {
        boolean isStated = published != Packing.NOT_SPECIFIED
                && published != Packing.OTHER
                && claimed != Packing.NOT_SPECIFIED
                && claimed != Packing.OTHER;
        if (!isStated) {
            return Agreement.NOT_STATED;
        }
        return published == claimed ? Agreement.AGREES : Agreement.CONTRADICTS;
    }

    /** A limit at any point holds the average under it too, and does not show by how much. */
    private static Agreement fat(FatThickness published, Claim claim) {
        return published.limit().map(limit -> fat(limit, claim)).orElse(Agreement.NOT_STATED);
    }

    private static Agreement fat(Quantity limit, Claim claim) {
        if (claim instanceof Claim.AverageFat average) {
            return average.limit().compareTo(limit) < 0 ? Agreement.TIGHTER : Agreement.FOLLOWS;
        }
        int order = ((Claim.FatAtAnyPoint) claim).limit().compareTo(limit);
        if (order == 0) {
            return Agreement.AGREES;
        }
        return order < 0 ? Agreement.TIGHTER : Agreement.LOOSER;
    }
}
