package dev.gambrel.yields.conformance;

import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.anatomy.OtherName;
import dev.gambrel.tree.anatomy.Piece;
import dev.gambrel.tree.anatomy.Reference;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Finds what of the house's answers to a name of the buyer's: by the name itself, else by what either side also calls it, else
 * as the same piece of the animal, else by its number in a published scheme. The first that finds anything decides; where it
 * finds several, nobody is chosen. Made once, O(products); a question costs O(what it finds).
 */
final class Matcher {
    /** One more than are ever named. */
    static final int MOST = 9;

    private final Map<TreePath, List<Offer>> byPath = new HashMap<>();
    private final Map<TradeName, List<Offer>> byName = new HashMap<>();
    private final Map<TradeName, List<Offer>> byOtherName = new HashMap<>();
    /** Pieces are told apart as they stand in the species, not by what they hold. */
    private final Map<Piece, List<Offer>> byPiece = new IdentityHashMap<>();

    private final Map<List<Object>, List<Offer>> byNumber = new HashMap<>();

    Matcher(List<Offer> offers) {
        for (Offer offer : offers) {
            put(byPath, offer.product().path(), offer);
            put(byName, offer.names().name(), offer);
            offer.names().otherNames().forEach(other -> put(byOtherName, other.name(), offer));
            offer.names().piece().forEach(piece -> put(byPiece, piece, offer));
            offer.names().references().forEach(reference -> put(byNumber, number(reference), offer));
        }
    }

    private static <K> void put(Map<K, List<Offer>> map, K key, Offer offer) {
        map.computeIfAbsent(key, k -> new ArrayList<>(1)).add(offer);
    }

    private static List<Object> number(Reference reference) {
        return List.of(
                reference.scheme(), TradeName.isAcceptable(reference.number()) ? TradeName.of(reference.number()) : "");
    }

    /** What the house has at a path; nothing if there is no such thing. */
    List<Offer> at(TreePath path) {
        return byPath.getOrDefault(path, List.of());
    }

    /** Every name that the house uses, to find the nearest. */
    Set<TradeName> names() {
        Set<TradeName> names = new HashSet<>(byName.keySet());
        names.addAll(byOtherName.keySet());
        return names;
    }

    /** What may answer to something that is asked for, within a stretch of the house's; none, one, or the first of several. */
    List<Offer> matching(Offer asked, Offers.Within within) {
        List<List<Offer>> tiers = List.of(
                first(Stream.of(called(byName, asked.names().name())), within),
                first(alsoCalled(asked), within),
                first(asked.names().piece().stream().map(piece -> byPiece.getOrDefault(piece, List.of())), within),
                first(
                        asked.names().references().stream()
                                .map(number -> byNumber.getOrDefault(number(number), List.of())),
                        within));
        List<Offer> found =
                tiers.stream().filter(tier -> !tier.isEmpty()).findFirst().orElse(List.of());
        return isOtherPiece(asked, found)
                ? Stream.concat(found.stream(), tiers.get(2).stream())
                        .distinct()
                        .toList()
                : found;
    }

    private static List<Offer> called(Map<TradeName, List<Offer>> names, TradeName name) {
        return names.getOrDefault(name, List.of());
    }

    private Stream<List<Offer>> alsoCalled(Offer asked) {
        Stream<List<Offer>> buyerCallsIt = asked.names().otherNames().stream()
                .map(OtherName::name)
                .flatMap(name -> Stream.of(called(byName, name), called(byOtherName, name)));
        return Stream.concat(Stream.of(called(byOtherName, asked.names().name())), buyerCallsIt);
    }

    private static List<Offer> first(Stream<List<Offer>> lists, Offers.Within within) {
        return lists.flatMap(list -> within.of(list).stream().limit(MOST))
                .distinct()
                .limit(MOST)
                .toList();
    }

    /** The same word may mean another piece in another region. */
    private static boolean isOtherPiece(Offer asked, List<Offer> found) {
        return found.size() == 1
                && !asked.names().piece().isEmpty()
                && !found.get(0).names().piece().isEmpty()
                && asked.names().piece().get(0) != found.get(0).names().piece().get(0);
    }
}
