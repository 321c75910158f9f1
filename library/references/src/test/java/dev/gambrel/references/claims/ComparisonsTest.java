package dev.gambrel.references.claims;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.references.item.Animal;
import dev.gambrel.references.item.BoneState;
import dev.gambrel.references.item.Meaning;
import dev.gambrel.references.item.PublishedItems;
import dev.gambrel.references.item.Reference;
import dev.gambrel.references.item.Scheme;
import dev.gambrel.references.ranges.PublishedRanges;
import dev.gambrel.references.ranges.RangeTable;
import dev.gambrel.references.unece.MeatCode;
import dev.gambrel.references.unece.MeatCodes;
import dev.gambrel.references.unece.Packing;
import dev.gambrel.references.unece.Refrigeration;
import dev.gambrel.text.SourceText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Beef brisket, bone in, chilled, at most 3 mm of fat, vacuum packed: UNECE bovine 2007, seen as quoted elsewhere. */
class ComparisonsTest {
    private static final MeatCode BRISKET = code("10164300153201040050");

    private static MeatCode code(String digits) {
        return MeatCodes.decode(new SourceText("code", digits)).orElseThrow();
    }

    private static Agreement of(Claim claim) {
        return Comparisons.of(BRISKET, claim).agreement();
    }

    @Test
    void what_a_number_says_is_held_against_words() {
        assertEquals(Agreement.AGREES, of(new Claim.OfAnimal(Animal.BEEF)));
        assertEquals(Agreement.CONTRADICTS, of(new Claim.OfAnimal(Animal.SHEEP)));
        assertEquals(Agreement.AGREES, of(new Claim.Bone(BoneState.BONE_IN)));
        assertEquals(Agreement.CONTRADICTS, of(new Claim.Bone(BoneState.BONELESS)));
        assertEquals(Agreement.CONTRADICTS, of(new Claim.Kept(Refrigeration.FROZEN)));
        assertEquals(Agreement.CONTRADICTS, of(new Claim.Packed(Packing.BULK)));
        assertEquals(Agreement.AGREES, of(new Claim.Packed(Packing.VACUUM)));
    }

    /** A limit at any point holds the average under it, and does not prove a lower one. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            3, AGREES, FOLLOWS
            2, TIGHTER, TIGHTER
            5, LOOSER, FOLLOWS
            """)
    void fat_at_any_point_and_on_average_are_two_measures(String limit, Agreement anyPoint, Agreement average) {
        Quantity millimetres = Quantity.of(limit, Unit.MILLIMETRE);
        assertEquals(anyPoint, of(new Claim.FatAtAnyPoint(millimetres)));
        assertEquals(average, of(new Claim.AverageFat(millimetres)));
        assertTrue(Comparisons.of(BRISKET, new Claim.FatAtAnyPoint(millimetres)).restsOnMemory());
    }

    @Test
    void deep_frozen_is_frozen_and_not_the_other_way_about() {
        MeatCode frozen = code("10164300200000000000");
        MeatCode deep = code("10164300300000000000");
        assertEquals(
                Agreement.TIGHTER,
                Comparisons.of(frozen, new Claim.Kept(Refrigeration.DEEP_FROZEN))
                        .agreement());
        assertEquals(
                Agreement.LOOSER,
                Comparisons.of(deep, new Claim.Kept(Refrigeration.FROZEN)).agreement());
    }

    @Test
    void nothing_is_concluded_from_what_is_not_held() {
        MeatCode mutton = code("40460000153201040050");
        Claim fat = new Claim.FatAtAnyPoint(Quantity.of("3", Unit.MILLIMETRE));
        assertEquals(
                "fat thickness is 4, not verified for sheep",
                Comparisons.of(mutton, fat).published());
        assertEquals(Agreement.NOT_STATED, Comparisons.of(mutton, fat).agreement());
        MeatCode unknown = code("10164400000000000000");
        assertEquals(
                Agreement.NOT_STATED,
                Comparisons.of(unknown, new Claim.Bone(BoneState.BONELESS)).agreement());
        assertEquals(
                Agreement.NOT_STATED,
                Comparisons.of(unknown, new Claim.Packed(Packing.VACUUM)).agreement());
        Meaning.Known rib = (Meaning.Known) PublishedItems.lookUp(Reference.of(Scheme.IMPS, "112"));
        assertEquals(
                Agreement.NOT_STATED,
                Comparisons.of(rib.item(), new Claim.Bone(BoneState.BONELESS)).agreement());
    }

    /** Range B of IMPS 112 is 6 to 8 lb, of D 10 lb and up. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            B, 6, 8, AGREES
            B, 6.5, 7, TIGHTER
            B, 5, 9, LOOSER
            B, 7, 9, PARTLY
            B, 8, 10, CONTRADICTS
            B, 5, 6, CONTRADICTS
            B, 6, 6, TIGHTER
            D, 10, 12, TIGHTER
            D, 9, 12, PARTLY
            D, 4, 9, CONTRADICTS
            """)
    void weights_in_words_are_held_against_a_range(String range, String from, String to, Agreement agreement) {
        RangeTable table = PublishedRanges.of(Reference.of(Scheme.IMPS, "112")).get(0);
        Claim.PieceWeight claim = new Claim.PieceWeight(Quantity.of(from, Unit.POUND), Quantity.of(to, Unit.POUND));
        assertEquals(
                agreement,
                Comparisons.of(table, table.range(range).orElseThrow(), claim).agreement());
    }

    @Test
    void pounds_and_kilograms_are_compared_exactly() {
        RangeTable table = PublishedRanges.of(Reference.of(Scheme.IMPS, "112")).get(0);
        Claim.PieceWeight claim = new Claim.PieceWeight(
                Quantity.of("2.72155422", Unit.KILOGRAM), Quantity.of("3.62873896", Unit.KILOGRAM));
        assertEquals(
                Agreement.AGREES,
                Comparisons.of(table, table.range("B").orElseThrow(), claim).agreement());
    }
}
