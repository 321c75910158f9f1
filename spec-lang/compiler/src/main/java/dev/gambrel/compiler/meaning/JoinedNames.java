package dev.gambrel.compiler.meaning;

import dev.gambrel.text.TradeName;
import java.util.ArrayList;
import java.util.List;

/** Several names with "and" between: "femur and patella" is two. */
public final class JoinedNames {
    private JoinedNames() {}

    /** Each name by itself. */
    public static List<TradeName> of(TradeName joined) {
        if (!joined.key().contains(" and ")) {
            return List.of(joined);
        }
        List<TradeName> names = new ArrayList<>(2);
        for (String name : joined.text().split("(?i) and ")) {
            names.add(TradeName.of(name, joined));
        }
        return names;
    }
}
