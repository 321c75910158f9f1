package dev.gambrel.compiler.revision;

import dev.gambrel.compiler.syntax.Keyword;
import dev.gambrel.compiler.syntax.Statement;
import dev.gambrel.compiler.syntax.Statement.Declaration;
import dev.gambrel.text.TradeName;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/** The lines of one pair of braces while they are revised, found by what they are and by name. */
final class Lines {
    /** Of lines of one name only so many are asked for a share; more than one is reported in any case. */
    private static final int MOST_ALIKE = 64;

    private final TreeMap<Integer, Statement> lines = new TreeMap<>();
    private final Map<Integer, LineKey> keys = new HashMap<>();
    private final Map<Integer, TradeName> names = new HashMap<>();
    private final Map<LineKey, SortedSet<Integer>> byKey = new HashMap<>();
    private final Map<TradeName, SortedSet<Integer>> byName = new LinkedHashMap<>();
    private final Map<Keyword, Integer> counts = new EnumMap<>(Keyword.class);
    private final Map<LineKey, Declaration> holders = new HashMap<>();
    private boolean knowsHolders;
    private int next;

    Lines(List<Statement> before) {
        before.forEach(this::add);
    }

    void add(Statement statement) {
        int at = next++;
        lines.put(at, statement);
        if (statement instanceof Declaration line) {
            keys.put(at, LineKey.of(line));
            names.put(at, LineKey.name(line));
            byKey.computeIfAbsent(keys.get(at), k -> new TreeSet<>()).add(at);
            byName.computeIfAbsent(names.get(at), k -> new TreeSet<>()).add(at);
            counts.merge(line.keyword(), 1, Integer::sum);
        }
    }

    /** Another line in the place of one; it is found by what the first one was. */
    void put(int at, Declaration line) {
        lines.put(at, line);
    }

    void remove(int at) {
        counts.merge(get(at).keyword(), -1, Integer::sum);
        lines.remove(at);
        byKey.get(keys.get(at)).remove(at);
        byName.get(names.get(at)).remove(at);
    }

    Declaration get(int at) {
        return (Declaration) lines.get(at);
    }

    /** The lines of a key, as they are now. */
    SortedSet<Integer> find(LineKey key) {
        return byKey.getOrDefault(key, Collections.emptySortedSet());
    }

    /** The line that has such a one in its braces, however deep. All are looked up once, when first asked for. */
    Optional<Declaration> holderOf(LineKey key) {
        if (!knowsHolders) {
            knowsHolders = true;
            lines.values().forEach(this::indexHolders);
        }
        return Optional.ofNullable(holders.get(key));
    }

    private void indexHolders(Statement statement) {
        if (statement instanceof Declaration line) {
            for (Statement inner : line.body()) {
                if (inner instanceof Declaration candidate) {
                    holders.putIfAbsent(LineKey.of(candidate), line);
                }
                indexHolders(inner);
            }
        }
    }

    /** Lines of a name, as they are now; a line without one is called by its keyword. */
    SortedSet<Integer> called(TradeName name) {
        return byName.getOrDefault(name, Collections.emptySortedSet());
    }

    /** The only part of a name that has a share. */
    Optional<Integer> part(TradeName name, TradeName whole) {
        return called(name).stream()
                .limit(MOST_ALIKE)
                .filter(at -> WrittenShare.of(get(at), whole).isPresent())
                .findFirst();
    }

    boolean hasRest() {
        return has(Keyword.REST_LINE);
    }

    /** Whether they are parts that make up the whole. */
    boolean isDivided() {
        return hasRest() || has(Keyword.CUT_LINE);
    }

    private boolean has(Keyword keyword) {
        return counts.getOrDefault(keyword, 0) > 0;
    }

    Collection<TradeName> names() {
        return byName.keySet();
    }

    List<Statement> list() {
        return new ArrayList<>(lines.values());
    }
}
