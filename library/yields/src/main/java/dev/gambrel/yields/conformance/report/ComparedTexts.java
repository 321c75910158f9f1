package dev.gambrel.yields.conformance.report;

import dev.gambrel.diagnostic.Place;
import dev.gambrel.diagnostic.Visible;
import java.util.function.UnaryOperator;

/**
 * The two texts that were compared.
 *
 * @param house the house's
 * @param buyer the buyer's
 */
public record ComparedTexts(Text house, Text buyer) {
    /**
     * One of them.
     *
     * @param name what people call it, such as the name of its file
     * @param written where something of its tree is written, as {@code Origins::written} tells
     */
    public record Text(String name, UnaryOperator<Place> written) {
        /**
         * A tree that nobody wrote as text.
         *
         * @param name what people call it
         * @return a text without lines
         */
        public static Text unwritten(String name) {
            return new Text(name, place -> place);
        }

        /**
         * Where something is written, in words.
         *
         * @param place a place in its tree
         * @return "hogget.cuts:12", or the name alone; harmless to print
         */
        public String where(Place place) {
            Place at = written.apply(place);
            Place text = at instanceof Place.Written both ? both.text() : at;
            return Visible.text(
                    text instanceof Place.InText in
                            ? in.text().name() + ":"
                                    + in.text().position(in.span().start()).line()
                            : name);
        }
    }
}
