package dev.gambrel.references.item;

import dev.gambrel.references.source.Citation;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Reads a table of items: number or run of numbers, bone in or out where stated, name, and a short definition if any. */
final class ItemTable {
    private static final int NUMBERS = 0;
    private static final int BONE = 1;
    private static final int NAME = 2;
    private static final int DEFINITION = 3;
    private static final Map<String, BoneState> BONES =
            Map.of("in", BoneState.BONE_IN, "out", BoneState.BONELESS, "-", BoneState.NOT_STATED);

    private final Scheme scheme;
    private final List<Item> items = new ArrayList<>();

    ItemTable(Scheme scheme) {
        this.scheme = scheme;
    }

    /** Adds lines of one animal and one source. */
    ItemTable of(Animal animal, Citation citation, String lines) {
        lines.lines().map(line -> line.split(" *\\| *")).forEach(cells -> {
            BoneState bone = BONES.get(cells[BONE]);
            String definition = cells.length > DEFINITION ? cells[DEFINITION] : "";
            items.add(new Item(scheme, animal, numbers(cells[NUMBERS]), cells[NAME], bone, definition, citation));
        });
        return this;
    }

    List<Item> items() {
        return List.copyOf(items);
    }

    private static Numbers numbers(String written) {
        String[] ends = written.split("-");
        return new Numbers(ends[0], ends[ends.length - 1]);
    }
}
