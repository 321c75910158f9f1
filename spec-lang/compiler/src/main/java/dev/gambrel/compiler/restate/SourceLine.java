package dev.gambrel.compiler.restate;

import dev.gambrel.text.TradeName;
import dev.gambrel.tree.Source;
import java.util.regex.Pattern;

/** A source as it is declared and cited. */
final class SourceLine {
    /** A name with anything else in it stands in quotation marks. */
    private static final Pattern PLAIN = Pattern.compile("[A-Za-z]+( [A-Za-z]+)*");

    private SourceLine() {}

    static String written(TradeName name) {
        return PLAIN.matcher(name.text()).matches() ? name.text() : quoted(name.text());
    }

    static String of(Source source) {
        return "source " + written(source.name()) + ", " + source.kind().words() + " " + quoted(source.citation());
    }

    private static String quoted(String words) {
        return '"' + words.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
    }
}
