package dev.gambrel.tree;

import dev.gambrel.text.TradeName;
import dev.gambrel.tree.anatomy.OtherName;
import dev.gambrel.tree.anatomy.Reference;
import dev.gambrel.tree.bench.Bench;
import dev.gambrel.tree.term.Term;
import java.util.List;

/**
 * What a cut is, and how it is parted from its neighbours.
 *
 * @param boneState whether bone is left in
 * @param contents bones and muscles that it is said to contain
 * @param separations where and with what it is parted
 * @param references numbers in published schemes
 * @param otherNames what it is called elsewhere
 * @param notes free words that no rule reads
 * @param bench what the bench is told besides, and what is undertaken or required
 */
public record Description(
        BoneState boneState,
        List<TradeName> contents,
        List<Separation> separations,
        List<Reference> references,
        List<OtherName> otherNames,
        List<String> notes,
        Bench bench) {
    /** Nothing said. */
    public static final Description NONE =
            new Description(BoneState.NOT_STATED, List.of(), List.of(), List.of(), List.of(), List.of());

    /** Copies the lists. */
    public Description {
        contents = List.copyOf(contents);
        separations = List.copyOf(separations);
        references = List.copyOf(references);
        otherNames = List.copyOf(otherNames);
        notes = List.copyOf(notes);
    }

    /**
     * A description that tells the bench nothing more.
     *
     * @param boneState whether bone is left in
     * @param contents bones and muscles that it is said to contain
     * @param separations where and with what it is parted
     * @param references numbers in published schemes
     * @param otherNames what it is called elsewhere
     * @param notes free words that no rule reads
     */
    public Description(
            BoneState boneState,
            List<TradeName> contents,
            List<Separation> separations,
            List<Reference> references,
            List<OtherName> otherNames,
            List<String> notes) {
        this(boneState, contents, separations, references, otherNames, notes, Bench.NONE);
    }

    /**
     * What is undertaken of it, or required.
     *
     * @return terms in the order written
     */
    public List<Term> terms() {
        return bench.terms();
    }
}
