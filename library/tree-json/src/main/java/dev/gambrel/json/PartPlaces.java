package dev.gambrel.json;

import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.json.located.Located;
import dev.gambrel.text.SourceText;
import dev.gambrel.text.Span;
import dev.gambrel.text.TradeName;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Finds where in a JSON file stands what a rule speaks of. A look-up costs O(depth × parts of each cut passed). */
final class PartPlaces {
    private final SourceText text;
    private final Located file;
    private final Map<Located, Map<TradeName, List<Located>>> byName = new IdentityHashMap<>();

    PartPlaces(SourceText text, Located file) {
        this.text = text;
        this.file = file;
    }

    /** A place in the tree, with its place in the file beside it; any other place as it is. */
    Place written(Place place) {
        return place instanceof Place.InTree tree ? new Place.Written(tree, new Place.InText(text, span(tree))) : place;
    }

    private Span span(Place.InTree tree) {
        Optional<Located> estimate = tree.aspect() == Aspect.TERM ? estimate(tree.path()) : Optional.empty();
        if (estimate.isPresent()) {
            return estimate.get().span();
        }
        Located part = tree.aspect() == Aspect.ALLOWANCE ? file : part(tree);
        return Stream.concat(routes(tree.aspect()), routes(Aspect.NAME))
                .flatMap(route -> follow(part, route).stream())
                .findFirst()
                .map(found -> item(found, tree.index()).span())
                .orElse(new Span(part.span().start(), part.span().start() + 1));
    }

    /** The part of a path, or the nearest one above it that is there; an index on a name counts parts of that name. */
    private Located part(Place.InTree tree) {
        Located part = file;
        int depth = tree.path().names().size();
        for (TradeName name : tree.path().names()) {
            depth--;
            List<Located> called = called(part, name);
            if (called.isEmpty()) {
                return part;
            }
            boolean counted = depth == 0 && tree.aspect() == Aspect.NAME && tree.index() < called.size();
            part = called.get(counted ? tree.index() : 0);
        }
        return part;
    }

    /** The first estimate of a name. */
    private Optional<Located> estimate(TreePath path) {
        return follow(file, "carcass/estimates").map(PartPlaces::items).orElse(List.of()).stream()
                .filter(item -> field(item, "name").stream()
                        .map(name -> TradeName.of(((Located.Text) name).text()))
                        .anyMatch(name -> path.equals(TreePath.ROOT.then(name))))
                .findFirst();
    }

    /** The parts and portions of one name, found once for each part that has any. */
    private List<Located> called(Located above, TradeName name) {
        return byName.computeIfAbsent(above, PartPlaces::named).getOrDefault(name, List.of());
    }

    private static Map<TradeName, List<Located>> named(Located above) {
        Map<TradeName, List<Located>> named = new HashMap<>();
        for (String list : List.of("parts", "portions")) {
            for (Located item : field(above, list).map(PartPlaces::items).orElse(List.of())) {
                Stream.of("name", "kind")
                        .flatMap(field -> field(item, field).stream())
                        .findFirst()
                        .ifPresent(text -> named.computeIfAbsent(
                                        TradeName.of(((Located.Text) text).text()), n -> new ArrayList<>(1))
                                .add(item));
            }
        }
        return named;
    }

    /** Where an aspect is written in a part or, where the path is empty, in the file. */
    private static Stream<String> routes(Aspect aspect) {
        return switch (aspect) {
            case NAME -> Stream.of("name", "kind", "carcass");
            case SHARE -> Stream.of("share", "target");
            case DERIVED_SHARE -> Stream.of("share/others", "share");
            case COUNT -> Stream.of("pieces");
            case BONE_STATE -> Stream.of("description/boneState");
            case CONTENTS -> Stream.of("description/contents", "bones");
            case SEPARATION -> Stream.of("description/separations");
            case STREAM -> Stream.of("streams", "home/stream", "home", "remainder/stream", "remainder");
            case LIMIT -> Stream.of("range", "rule/limits", "rule");
            case REFERENCE -> Stream.of("description/references");
            case SOURCE -> Stream.of("sources", "share/sources");
            case BAND -> Stream.of("carcass/band", "carcass");
            case STEP -> Stream.of("carcass/steps", "carcass");
            case LEAN -> Stream.of("streams", "home/lean");
            case SPECIES -> Stream.of("species");
            case MEASURE -> Stream.of("carcass/measures");
            case ESTIMATE, TERM -> Stream.of("carcass/estimates");
            case ALLOWANCE -> Stream.of("specification/allowances");
            case TITLE -> Stream.of("specification/title");
            case DRESSING -> Stream.of("carcass/dressing");
            case OTHER_NAME -> Stream.of("description/otherNames");
            case NOTE -> Stream.of("description/notes", "notes");
            case SUPPLY -> Stream.of("description/terms", "specification/terms");
            case CHOICE -> Stream.of("choice");
            case GRADE -> Stream.of("carcass/grades", "carcass");
            default -> benchRoutes(aspect);
        };
    }

    /** Of portions, and of what the bench is told. */
    private static Stream<String> benchRoutes(Aspect aspect) {
        return switch (aspect) {
            case THICKNESS -> Stream.of("thickness");
            case THICKNESS_LIMIT -> Stream.of("thicknessRange");
            case PRECEDENCE -> Stream.of("rules");
            case NUMBER -> Stream.of("number");
            case FEWEST -> Stream.of("fewest");
            case KERF -> Stream.of("kerf");
            case LENGTH -> Stream.of("length");
            case SMALLEST -> Stream.of("smallest");
            case END_PIECES -> Stream.of("endPieces/home/stream", "endPieces");
            case BINDING -> Stream.of("binding");
            case PACK -> Stream.of("pack");
            case TARE -> Stream.of("tares");
            case MATCHING -> Stream.of("description/bench/matching");
            case RIB_COUNT -> Stream.of("description/bench/ribs");
            case TREATMENT -> Stream.of("description/bench/treatments");
            case TURN -> Stream.of("description/bench/after", "after");
            default -> Stream.of();
        };
    }

    private static Optional<Located> follow(Located from, String route) {
        Optional<Located> at = Optional.of(from);
        for (String step : route.split("/")) {
            at = at.flatMap(value -> field(value, step));
        }
        return at;
    }

    private static Located item(Located found, int index) {
        List<Located> items = items(found);
        return index < items.size() ? items.get(index) : found;
    }

    private static List<Located> items(Located value) {
        return value instanceof Located.Items list ? list.items() : List.of();
    }

    private static Optional<Located> field(Located value, String name) {
        return value instanceof Located.Fields object && object.fields().containsKey(name)
                ? Optional.of(object.fields().get(name).value())
                : Optional.empty();
    }
}
