package dev.gambrel.references.unece;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.references.item.Animal;
import dev.gambrel.references.item.Item;
import dev.gambrel.references.item.Meaning;
import dev.gambrel.references.source.Certainty;
import dev.gambrel.text.SourceText;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lists and layout: UNECE Standard Bovine Meat, Carcases and Cuts, 2007, seen as quoted elsewhere. */
class MeatCodesTest {
    private static Result<MeatCode> decode(String code) {
        return MeatCodes.decode(new SourceText("code", code));
    }

    /** Codes of findings with the characters that are underlined. */
    private static String found(String code) {
        SourceText text = new SourceText("code", code);
        return MeatCodes.decode(text).diagnostics().stream()
                .map(finding -> finding.code().id() + " " + underlined(finding))
                .collect(Collectors.joining(", "));
    }

    private static String underlined(Diagnostic finding) {
        Place.InText place = (Place.InText) finding.place();
        return place.span().start() + "-" + place.span().end();
    }

    /** The test value of the public decoder that quotes the standard. */
    @Test
    void each_digit_of_a_code_has_its_meaning() {
        MeatCode code = decode("10164300153201040050").orElseThrow();
        assertEquals(Animal.BEEF, code.animal());
        Item brisket = assertInstanceOf(Meaning.Known.class, code.meaning()).item();
        assertEquals("Brisket, bone in", brisket.name() + ", " + brisket.bone().words());
        assertEquals(
                List.of(
                        Refrigeration.CHILLED,
                        Category.STEER_AND_OR_HEIFER,
                        Production.ORGANIC,
                        Feeding.FORAGE_FED,
                        Slaughter.CONVENTIONAL,
                        PostSlaughter.NOT_SPECIFIED,
                        FatThickness.MM_3,
                        Quality.NOT_SPECIFIED,
                        WeightRange.NOT_SPECIFIED,
                        Packing.VACUUM,
                        Conformity.NOT_SPECIFIED),
                List.of(Field.values()).stream()
                        .map(field -> ((Entry.Meant) code.entry(field)).value())
                        .toList());
    }

    /** 44932211340000145100 goes about as a value for AI (7002) and does not fit the layout. */
    @ParameterizedTest
    @CsvSource(delimiter = ';', textBlock = """
            44932211340000145100;  G2004 6-7, G2004 7-8, G2003 0-2
            44932200340000145100;  G2003 0-2
            10164301153201040050;  G2004 7-8
            10164310153201040050;  G2004 6-7
            10164300153211040050;  G2004 12-13
            10164300453201040050;  G2005 8-9
            10164300188201240050;  G2005 9-10, G2005 10-11, G2005 14-15
            10164400153201040050;  G2006 2-6
            1016430015320104005;   G2001 0-19
            101643001532010400500; G2001 0-21
            1016430015320104005O;  G2002 19-20
            '１0164300153201040050'; G2002 0-1
            '101643001532010400٥0'; G2002 18-19
            '1016430 153201040050'; G2002 7-8
            """)
    void what_may_not_stand_where_it_stands_is_underlined(String code, String found) {
        assertEquals(found, found(code));
    }

    @Test
    void nothing_and_nonsense_are_refused_in_few_words() {
        assertEquals("G2001 0-0", found(""));
        assertEquals("G2001 0-100000", found("x".repeat(100_000)));
        assertEquals(5, decode("x".repeat(20)).diagnostics().size());
    }

    @Test
    void lists_of_cattle_are_not_used_for_sheep() {
        MeatCode code = decode("40460000178201070050").orElseThrow();
        assertEquals(new Entry.NotVerified(7), code.entry(Field.CATEGORY));
        assertEquals(new Entry.NotVerified(2), code.entry(Field.FEEDING));
        assertEquals(new Entry.NotVerified(7), code.entry(Field.FAT));
        assertEquals(new Entry.NotVerified(8), code.entry(Field.PRODUCTION));
        Entry.Meant chilled = assertInstanceOf(Entry.Meant.class, code.entry(Field.REFRIGERATION));
        assertEquals(Refrigeration.CHILLED, chilled.value());
        assertEquals(Certainty.FROM_MEMORY, chilled.citation().certainty());
        assertEquals("40460000178201070050", code.encode());
    }

    @Test
    void a_code_is_written_from_what_is_known() {
        MeatCode code = new MeatCode(
                Animal.BEEF,
                "2240",
                Map.of(
                        Field.REFRIGERATION, Refrigeration.FROZEN.digit(),
                        Field.PACKING, Packing.VACUUM.digit()));
        assertEquals("10224000200000000050", code.encode());
        assertThrows(
                IllegalArgumentException.class, () -> new MeatCode(Animal.BEEF, "2240", Map.of(Field.CATEGORY, 8)));
        assertThrows(IllegalArgumentException.class, () -> new MeatCode(Animal.BEEF, "22", Map.of()));
        assertTrue(new MeatCode(Animal.SHEEP, "4600", Map.of(Field.CATEGORY, 8))
                .encode()
                .startsWith("404600000"));
    }
}
