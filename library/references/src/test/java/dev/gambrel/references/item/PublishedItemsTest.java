package dev.gambrel.references.item;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.references.source.Certainty;
import java.util.List;
import org.junit.jupiter.api.Test;

class PublishedItemsTest {
    private static Item known(Scheme scheme, String number) {
        return assertInstanceOf(Meaning.Known.class, PublishedItems.lookUp(Reference.of(scheme, number)))
                .item();
    }

    /** UNECE bovine 2007, seen as quoted elsewhere. */
    @Test
    void a_number_says_cut_bone_and_how_sure_it_is() {
        Item brisket = known(Scheme.UNECE, "1643");
        assertEquals("UNECE 1643, beef, 2007", brisket.toString());
        assertEquals(BoneState.BONE_IN, brisket.bone());
        assertEquals(Certainty.SEEN_QUOTED, brisket.citation().certainty());
        assertEquals(BoneState.BONELESS, known(Scheme.UNECE, "2240").bone());
    }

    @Test
    void the_same_digits_mean_something_else_in_another_scheme() {
        assertEquals("Eye of rump", known(Scheme.UNECE, "2093").name());
        assertEquals("Eye of rump", known(Scheme.AUSTRALIAN_HANDBOOK, "2110").name());
        assertInstanceOf(Meaning.Unknown.class, PublishedItems.lookUp(Reference.of(Scheme.UNECE, "2110")));
    }

    @Test
    void a_number_within_a_run_has_its_name_and_one_printed_alone_its_own() {
        assertEquals("Butt", known(Scheme.UNECE, "1501").name());
        assertEquals("Butt and rump", known(Scheme.UNECE, "1502").name());
        assertInstanceOf(Meaning.Unknown.class, PublishedItems.lookUp(Reference.of(Scheme.UNECE, "1504")));
    }

    @Test
    void editions_and_animals_are_told_apart() {
        Meaning other = PublishedItems.lookUp(new Reference(Scheme.UNECE, "2240", "1999"));
        assertEquals(
                "Cube roll (rib eye roll)",
                assertInstanceOf(Meaning.OtherEdition.class, other)
                        .items()
                        .get(0)
                        .name());
        assertEquals(
                2,
                assertInstanceOf(Meaning.Several.class, PublishedItems.lookUp(Reference.of(Scheme.IMPS, "410")))
                        .items()
                        .size());
        assertInstanceOf(Meaning.Known.class, PublishedItems.lookUp(new Reference(Scheme.IMPS, "410", "2014")));
        assertInstanceOf(
                Meaning.Unknown.class, PublishedItems.lookUp(Reference.of(Scheme.UNECE, "2240"), Animal.SHEEP));
        assertEquals(
                List.of(Animal.LLAMA, Animal.ALPACA),
                assertInstanceOf(Meaning.Several.class, PublishedItems.lookUp(Reference.of(Scheme.UNECE, "0040")))
                        .items()
                        .stream()
                        .map(Item::animal)
                        .toList());
    }

    @Test
    void small_letters_are_read_and_nonsense_is_unknown() {
        assertEquals("112A", known(Scheme.IMPS, "112a").numbers().from());
        assertInstanceOf(Meaning.Unknown.class, PublishedItems.lookUp(Reference.of(Scheme.UNECE, "１６４３")));
        assertInstanceOf(Meaning.Unknown.class, PublishedItems.lookUp(Reference.of(Scheme.UNECE, "15O1")));
    }

    @Test
    void every_item_is_found_by_its_own_number_edition_and_animal() {
        for (Item item : PublishedItems.all()) {
            Reference reference = new Reference(
                    item.scheme(), item.numbers().from(), item.citation().edition());
            Meaning meaning = PublishedItems.lookUp(reference, item.animal());
            assertTrue(meaning instanceof Meaning.Known known && known.item().equals(item), item + ": " + meaning);
        }
    }
}
