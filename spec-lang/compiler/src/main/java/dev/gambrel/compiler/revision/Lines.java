package dev.gambrel.compiler.revision;

import dev.gambrel.compiler.syntax.Keyword;
import dev.gambrel.compiler.syntax.Statement;
import dev.gambrel.compiler.syntax.Statement.Declaration;
import dev.gambrel.text.TradeName;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** The lines of one pair of braces while they are revised, found by what they are and by name. */
final class Lines {
    private final TreeMap<Integer, Statement> lines = new TreeMap<>();
    private final Map<LineKey, List<Integer>> byKey = new HashMap<>();
    private final Map<TradeName, List<Integer>> byName = new HashMap<>();
    private final Map<LineKey, Declaration> holders = new HashMap<>();
    private int next;

    Lines(List<Statement> before) {
        before.forEach(this::add);
    }

    void add(Statement statement) {
        int at = next++;
        lines.put(at, statement);
        if (statement instanceof Declaration line) {
            byKey.computeIfAbsent(LineKey.of(line), k -> new ArrayList<>(1)).add(at);
            byName.computeIfAbsent(LineKey.name(line), k -> new ArrayList<>(1)).add(at);
        }
    }

    void put(int at, Declaration line) {
        lines.put(at, line);
    }

    void remove(int at) {
        lines.remove(at);
    }

    Declaration get(int at) {
        return (Declaration) lines.get(at);
    }

    List<Integer> find(LineKey key) {
        return present(byKey.getOrDefault(key, List.of()));
    }

    /** The line that has such a one in its braces, however deep. All are looked up once, when first asked for. */
    Optional<Declaration> holderOf(LineKey key) {
        if (holders.isEmpty()) {
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

    /** Lines of a name; a line without one is called by its keyword. */
    List<Integer> called(TradeName name) {
        return present(byName.getOrDefault(name, List.of()));
    }

    private List<Integer> present(List<Integer> found) {
        return found.stream().filter(lines::containsKey).toList();
    }

    /** The only part of a name that has a share. */
    Optional<Integer> part(TradeName name, TradeName whole) {
        return called(name).stream()
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
        return lines.values().stream()
                .anyMatch(statement -> statement instanceof Declaration line && line.keyword() == keyword);
    }

    Collection<TradeName> names() {
        return byName.keySet();
    }

    List<Statement> list() {
        return new ArrayList<>(lines.values());
    }
}
