package dev.gambrel.batches;

import dev.gambrel.quantity.Unit;
import dev.gambrel.tree.Basis;
import java.util.List;

/**
 * What stands in which column.
 *
 * @param separator between the cells
 * @param names the names of the columns, without their units
 * @param units the unit of each column; empty where its heading has none
 * @param weight the column of the carcass weight
 * @param basis what was weighed
 */
record Heading(char separator, List<String> names, List<List<Unit>> units, int weight, Basis basis) {
    Heading {
        names = List.copyOf(names);
        units = List.copyOf(units);
    }
}
