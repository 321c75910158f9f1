package dev.gambrel.compiler.source;

import dev.gambrel.text.SourceText;
import dev.gambrel.text.TradeName;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** The species and published equations that come with the compiler, written in the language itself, each figure with its source. */
public final class Catalogue {
    /** What a {@code use} line begins with to mean the catalogue. */
    public static final String PREFIX = "catalogue:";

    private static final Map<TradeName, String> FILES = files();

    private static final List<String> EQUATIONS =
            List.of("beef equations", "game equations", "lamb equations", "pork equations");

    private Catalogue() {}

    private static Map<TradeName, String> files() {
        Map<TradeName, String> files = new LinkedHashMap<>();
        files.put(TradeName.of("sheep"), "sheep.cuts");
        files.put(TradeName.of("fallow deer"), "fallow-deer.cuts");
        files.put(TradeName.of("red deer"), "red-deer.cuts");
        files.put(TradeName.of("pig"), "pig.cuts");
        files.put(TradeName.of("cattle"), "cattle.cuts");
        return java.util.Collections.unmodifiableMap(files);
    }

    /**
     * The species that there are.
     *
     * @return their names as a {@code use} line writes them after the prefix
     */
    public static List<TradeName> species() {
        return new ArrayList<>(FILES.keySet());
    }

    /**
     * The collections of published equations that there are.
     *
     * @return their names as a {@code use} line writes them after the prefix
     */
    public static List<TradeName> equations() {
        return EQUATIONS.stream().map(TradeName::of).toList();
    }

    /**
     * All that there is: species, then equations.
     *
     * @return names as a {@code use} line writes them after the prefix
     */
    public static List<TradeName> names() {
        return Stream.concat(species().stream(), equations().stream()).toList();
    }

    /**
     * The text of one species or of one collection of equations.
     *
     * @param name its name
     * @return the text, or nothing if the catalogue lacks it
     */
    public static Optional<SourceText> text(TradeName name) {
        return equations().contains(name)
                ? Optional.of(read(name, name.key().replace(' ', '-') + ".cuts"))
                : Optional.ofNullable(FILES.get(name)).map(file -> read(name, file));
    }

    private static SourceText read(TradeName species, String file) {
        try (InputStream in = Catalogue.class.getResourceAsStream("/dev/gambrel/catalogue/" + file)) {
            return new SourceText(PREFIX + species.key(), new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
