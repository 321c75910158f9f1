package dev.gambrel.tree.rules;

import static dev.gambrel.tree.Sheet.boneless;
import static dev.gambrel.tree.Sheet.cut;
import static dev.gambrel.tree.Sheet.rest;
import static dev.gambrel.tree.rules.Held.breaks;
import static dev.gambrel.tree.rules.Held.keepsTheRules;
import static dev.gambrel.tree.rules.Held.only;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.gambrel.tree.Cut;
import dev.gambrel.tree.Description;
import dev.gambrel.tree.Part;
import dev.gambrel.tree.Sheep;
import dev.gambrel.tree.Sheet;
import dev.gambrel.tree.anatomy.OtherName;
import dev.gambrel.tree.inspection.TreeCode;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Sirloin is the chump in America and the loin in Britain; the cut itself may say which. */
class NamesThatMeanTwoTest {
    private static Sheet sheep(Part part) {
        return Sheet.of(part, rest("mince")).of(Sheep.sheep());
    }

    private static Cut alsoCalled(String name, Cut cut) {
        Description said = cut.description();
        List<OtherName> names = new ArrayList<>(said.otherNames());
        names.add(new OtherName(Sheet.name(name), List.of()));
        Description words = new Description(
                said.boneState(), said.contents(), said.separations(), said.references(), names, said.notes());
        return new Cut(cut.name(), cut.pieces(), cut.share(), words, cut.parts(), cut.home(), cut.portions());
    }

    @Test
    void the_cut_is_the_piece_that_its_other_name_leads_to() {
        keepsTheRules(sheep(alsoCalled("chump", cut("sirloin", "10"))));
        keepsTheRules(sheep(alsoCalled("loin", cut("sirloin", "10"))));
    }

    @Test
    void another_name_that_leads_to_neither_or_to_both_settles_nothing() {
        breaks(sheep(alsoCalled("house roast", cut("sirloin", "10"))), TreeCode.AMBIGUOUS_NAME);
        breaks(sheep(alsoCalled("shoulder", cut("sirloin", "10"))), TreeCode.AMBIGUOUS_NAME);
        breaks(sheep(alsoCalled("Sirloin", cut("sirloin", "10"))), TreeCode.AMBIGUOUS_NAME);
        breaks(sheep(alsoCalled("chump", alsoCalled("loin", cut("sirloin", "10")))), TreeCode.AMBIGUOUS_NAME);
    }

    @Test
    void it_is_said_how_to_keep_the_name() {
        assertEquals(
                "Or keep the name and say which piece it is: cut sirloin, also chump; or cut sirloin, also loin",
                only(sheep(cut("sirloin", "10")), TreeCode.AMBIGUOUS_NAME)
                        .help()
                        .get(1));
    }

    @Test
    void the_bones_of_a_piece_that_was_made_plain_are_known() {
        breaks(sheep(alsoCalled("chump", boneless(cut("sirloin", "10")))), TreeCode.BONE_LEFT_IN);
    }

    @Test
    void another_name_does_not_make_a_piece_of_what_is_none() {
        keepsTheRules(sheep(alsoCalled("chump", boneless(cut("house roast", "10")))));
    }
}
