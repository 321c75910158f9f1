package dev.gambrel.compiler.syntax;

import dev.gambrel.text.Span;
import dev.gambrel.tree.BoneState;
import dev.gambrel.tree.Source;
import dev.gambrel.tree.Stream;
import dev.gambrel.tree.TrimRule;
import dev.gambrel.tree.anatomy.PieceCount;
import dev.gambrel.tree.term.Judged;
import java.util.List;

/** Something that a line says besides its name. */
public sealed interface Clause {
    /**
     * Where it is written.
     *
     * @return the place
     */
    Span span();

    /** What only lines of one kind say; their clauses stand in a file of their own. */
    non-sealed interface OfOneKindOfLine extends Clause {}

    /**
     * A figure.
     *
     * @param figure the figure
     * @param span the place
     */
    record Figures(Figure figure, Span span) implements Clause {}

    /**
     * How many to a carcass.
     *
     * @param count one or two
     * @param span the place
     */
    record Count(PieceCount count, Span span) implements Clause {}

    /**
     * Bone in, part boned, boneless.
     *
     * @param state which
     * @param span the place
     */
    record Bones(BoneState state, Span span) implements Clause {}

    /**
     * Rib numbers.
     *
     * @param first the first rib
     * @param last the last rib
     * @param span the place
     */
    record Ribs(String first, String last, Span span) implements Clause {}

    /**
     * What a figure rests on.
     *
     * @param name the source's name
     * @param span the place
     */
    record Cites(Name name, Span span) implements Clause {}

    /**
     * How lean.
     *
     * @param figure the figure
     * @param judged how it is found
     * @param span the place
     */
    record Lean(Figure figure, Judged judged, Span span) implements Clause {}

    /**
     * What becomes of a stream.
     *
     * @param kind saleable, by-product or waste
     * @param span the place
     */
    record Kind(Stream.Kind kind, Span span) implements Clause {}

    /**
     * What it is called elsewhere.
     *
     * @param name the other name
     * @param regions where
     * @param span the place
     */
    record Also(Name name, List<String> regions, Span span) implements Clause {
        /** Copies the list. */
        public Also {
            regions = List.copyOf(regions);
        }
    }

    /**
     * Where the remainder of a portion goes.
     *
     * @param stream the stream
     * @param span the place
     */
    record Remainder(Name stream, Span span) implements Clause {}

    /**
     * A range that is accepted.
     *
     * @param low the low end
     * @param high the high end
     * @param span the place
     */
    record Between(Amount low, Amount high, Span span) implements Clause {}

    /**
     * A named loss in a step between bases.
     *
     * @param name what it is called
     * @param figure how much; none or one
     * @param span the place
     */
    record Loss(Name name, List<Figure> figure, Span span) implements Clause {
        /** Copies the list. */
        public Loss {
            figure = List.copyOf(figure);
        }
    }

    /**
     * What is lost day by day after a step.
     *
     * @param perDay how much each day
     * @param time for how long
     * @param span the place
     */
    record Hanging(Figure perDay, Amount time, Span span) implements Clause {}

    /**
     * The cuts that a stream may come from.
     *
     * @param cuts their names with "and" between
     * @param span the place
     */
    record OnlyFrom(Name cuts, Span span) implements Clause {}

    /**
     * In what a cut differs from its reference.
     *
     * @param words the words
     * @param span the place
     */
    record But(String words, Span span) implements Clause {}

    /**
     * How sure a source is, and its citation.
     *
     * @param kind how sure
     * @param citation the words
     * @param span the place
     */
    record Citation(Source.Kind kind, String citation, Span span) implements Clause {}

    /**
     * Free words, such as "skin off".
     *
     * @param words as written
     * @param span the place
     */
    record Words(String words, Span span) implements Clause {}

    /**
     * The arrow and the stream that it points to.
     *
     * @param stream the stream
     * @param span the stream's place
     */
    record Arrow(Name stream, Span span) implements Clause {}

    /**
     * A limit on a fat cover.
     *
     * @param atMost the limit
     * @param where how it is judged
     * @param span the place
     */
    record FatLimit(Amount atMost, TrimRule.Where where, Span span) implements Clause {}

    /**
     * Marks that what is removed is a gland.
     *
     * @param span the word "gland"
     */
    record GlandMark(Span span) implements Clause {}

    /**
     * Words in quotes.
     *
     * @param text what is within the quotes
     * @param span the place, quotes included
     */
    record Text(String text, Span span) implements Clause {}

    /**
     * A whole number, such as a version or a count; two for a range of counts.
     *
     * @param first the number
     * @param last the same, or the high end
     * @param span the place
     */
    record Numbers(String first, String last, Span span) implements Clause {}

    /**
     * The species that a specification is for.
     *
     * @param name its name
     * @param span the place
     */
    record ForSpecies(Name name, Span span) implements Clause {}

    /**
     * A basis of weight.
     *
     * @param words as written
     * @param span the place
     */
    record Basis(String words, Span span) implements Clause {}

    /**
     * The number and edition of a reference.
     *
     * @param number as printed
     * @param edition as printed, empty where none is given
     * @param span the place
     */
    record Item(String number, String edition, Span span) implements Clause {}

    /**
     * What a cut is made with.
     *
     * @param tools each tool
     * @param span the place
     */
    record Tools(List<Name> tools, Span span) implements Clause {
        /** Copies the list. */
        public Tools {
            tools = List.copyOf(tools);
        }
    }

    /**
     * Where a cut is made.
     *
     * @param landmark the landmark
     * @param span the place
     */
    record At(WrittenLandmark landmark, Span span) implements Clause {}

    /**
     * A region of the spine.
     *
     * @param word as written
     * @param span the place
     */
    record Region(String word, Span span) implements Clause {}

    /**
     * When a cut is worked in a way.
     *
     * @param choice as a rule, or when something is so
     * @param span the place
     */
    record Chosen(WrittenChoice choice, Span span) implements Clause {}
}
