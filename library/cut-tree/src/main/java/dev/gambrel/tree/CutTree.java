package dev.gambrel.tree;

import dev.gambrel.text.TradeName;
import dev.gambrel.tree.anatomy.Species;
import dev.gambrel.tree.term.Term;
import java.util.List;
import java.util.Optional;

/**
 * A whole specification: one carcass and how it is cut. Of a buyer's requirement the parts are the cuts that are asked for,
 * which have no shares.
 *
 * @param specification title and revision
 * @param carcass the weight basis, dressing and weight band that the shares hold for
 * @param species the animal's anatomy and published figures
 * @param streams where trim, bones and rests go
 * @param sources what figures may cite
 * @param parts what the carcass is divided into, in the order written
 * @param notes free words that no rule reads
 */
public record CutTree(
        Specification specification,
        Carcass carcass,
        Species species,
        List<Stream> streams,
        List<Source> sources,
        List<Part> parts,
        List<String> notes) {
    /** Copies the lists. */
    public CutTree {
        streams = List.copyOf(streams);
        sources = List.copyOf(sources);
        parts = List.copyOf(parts);
        notes = List.copyOf(notes);
    }

    /**
     * What is undertaken of everything, or required: cold, age, pack, claims.
     *
     * @return terms in the order written
     */
    public List<Term> terms() {
        return specification.terms();
    }

    /**
     * Whether it is a buyer's requirement, from which no yield can be worked out.
     *
     * @return true for a requirement, false for a house's specification
     */
    public boolean isRequirement() {
        return specification.side() == Side.BUYER;
    }

    /**
     * The same specification of the same animal, divided otherwise.
     *
     * @param divided the parts that the carcass is divided into
     * @return a tree with these parts; whether it keeps the rules is for {@link dev.gambrel.tree.rules.TreeRules} to say
     */
    public CutTree withParts(List<Part> divided) {
        return new CutTree(specification, carcass, species, streams, sources, divided, notes);
    }

    /**
     * The stream of a name.
     *
     * @param name any writing of the name
     * @return the first stream so called, if any
     */
    public Optional<Stream> stream(TradeName name) {
        return streams.stream().filter(s -> s.name().equals(name)).findFirst();
    }

    /**
     * The source of a name.
     *
     * @param name any writing of the name
     * @return the first source so called, if any
     */
    public Optional<Source> source(TradeName name) {
        return sources.stream().filter(s -> s.name().equals(name)).findFirst();
    }
}
