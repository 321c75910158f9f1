package dev.gambrel.compiler.origin;

import dev.gambrel.compiler.source.Catalogue;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.text.Position;
import dev.gambrel.text.SourceText;
import dev.gambrel.tree.Source;
import java.util.List;

/**
 * Where one value of a tree comes from.
 *
 * @param place the words that state it
 * @param sources what it rests on, in the order cited; empty where no source is stated
 * @param revised where earlier revisions stated it, latest first; empty where none did
 */
public record Origin(Place.InText place, List<Source> sources, List<Origin> revised) {
    /** Copies the lists. */
    public Origin {
        sources = List.copyOf(sources);
        revised = List.copyOf(revised);
    }

    /**
     * The file that states it, as people call it; one of the catalogue begins with {@code catalogue:}.
     *
     * @return its name
     */
    public String file() {
        return place.text().name();
    }

    /**
     * Whether the catalogue states it, and not the house.
     *
     * @return true for what comes with the program
     */
    public boolean isFromCatalogue() {
        return file().startsWith(Catalogue.PREFIX);
    }

    /**
     * Where its words begin.
     *
     * @return line and column, both counted from 1
     */
    public Position position() {
        return place.text().position(place.span().start());
    }

    /**
     * The words that state it, as written.
     *
     * @return at least one character
     */
    public String words() {
        return place.text().slice(place.span());
    }

    /**
     * The whole line of the file that its words begin on, as written.
     *
     * @return the line without its end
     */
    public String line() {
        SourceText text = place.text();
        return text.slice(text.line(position().line()));
    }
}
