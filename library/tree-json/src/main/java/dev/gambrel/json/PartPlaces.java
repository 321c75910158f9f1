package dev.gambrel.json;

import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.text.SourceText;
import dev.gambrel.text.Span;
import dev.gambrel.text.TradeName;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Finds where in a JSON file stands what a rule speaks of. A look-up costs O(depth × parts of each cut passed). */
final class PartPlaces {
    private final SourceText text;
    private final Located file;

    PartPlaces(SourceText text, Located file) {
        this.text = text;
        this.file = file;
    }

    /** A place in the tree, with its place in the file beside it; any other place as it is. */
    Place written(Place place) {
        return place instanceof Place.InTree tree ? new Place.Written(tree, new Place.InText(text, span(tree))) : place;
    }

    private Span span(Place.InTree tree) {
        Located part = file;
        for (TradeName name : tree.path().names()) {
            Optional<Located> inner = inner(part, name);
            if (inner.isEmpty()) {
                break;
            }
            part = inner.get();
        }
        Located where =
                tree.path().equals(TreePath.ROOT) ? field(file, "carcass").orElse(file) : part;
        return fields(tree.aspect())
                .flatMap(field -> field(where, field).stream())
                .findFirst()
                .map(found -> item(found, tree.index()).span())
                .orElse(new Span(where.span().start(), where.span().start() + 1));
    }

    private static Optional<Located> inner(Located above, TradeName name) {
        return Stream.of("parts", "portions")
                .flatMap(list -> field(above, list).stream())
                .flatMap(list -> items(list).stream())
                .filter(item -> isCalled(item, name))
                .findFirst();
    }

    private static boolean isCalled(Located item, TradeName name) {
        return Stream.of("name", "kind")
                .flatMap(field -> field(item, field).stream())
                .findFirst()
                .filter(text -> TradeName.of(((Located.Text) text).text()).equals(name))
                .isPresent();
    }

    /** Where an aspect may be written, the closest first; the name is the last resort. */
    private static Stream<String> fields(Aspect aspect) {
        return switch (aspect) {
            case SHARE, DERIVED_SHARE -> Stream.of("share", "target", "name");
            case SOURCE -> Stream.of("share", "name");
            case COUNT -> Stream.of("pieces", "name");
            case BONE_STATE, CONTENTS, SEPARATION, REFERENCE -> Stream.of("description", "bones", "name");
            case STREAM -> Stream.of("home", "remainder", "name");
            case LIMIT -> Stream.of("rule", "range", "name");
            case BAND -> Stream.of("band", "basis");
            case STEP -> Stream.of("steps", "basis");
            case NAME -> Stream.of("name", "basis", "kind");
        };
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
