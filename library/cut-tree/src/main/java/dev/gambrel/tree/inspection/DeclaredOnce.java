package dev.gambrel.tree.inspection;

import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.text.TradeName;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Consumer;

/** Names that a tree declares at its top, each of which may stand there once. */
public final class DeclaredOnce {
    private DeclaredOnce() {}

    /** The names without repetition, in the order declared; each repetition is a finding. */
    public static Set<TradeName> names(
            List<TradeName> declared,
            Aspect aspect,
            BiFunction<TradeName, Place, Diagnostic> repeated,
            Consumer<Diagnostic> found) {
        Map<TradeName, Integer> first = new LinkedHashMap<>();
        for (int i = 0; i < declared.size(); i++) {
            Integer earlier = first.putIfAbsent(declared.get(i), i);
            if (earlier != null) {
                found.accept(repeated.apply(declared.get(i), new Place.InTree(TreePath.ROOT, aspect, i))
                        .related(new Place.InTree(TreePath.ROOT, aspect, earlier), "declared first")
                        .help("Take one of the two lines out, or give it another name."));
            }
        }
        return first.keySet();
    }
}
