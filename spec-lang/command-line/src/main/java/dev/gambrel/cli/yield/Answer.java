package dev.gambrel.cli.yield;

import dev.gambrel.cli.json.CombinedJson;
import dev.gambrel.cli.json.YieldJson;
import dev.gambrel.quantity.Unit;
import dev.gambrel.yields.CombinedYields;
import dev.gambrel.yields.ExpectedYields;
import dev.gambrel.yields.portions.Promise;
import dev.gambrel.yields.table.CombinedTable;
import dev.gambrel.yields.table.YieldTable;
import java.util.List;

/** What is printed of the yields, in each form. */
sealed interface Answer {
    String text(Unit unit, int decimals);

    String csv(Unit unit, int decimals);

    String json(Unit unit);

    /** What one carcass gives. */
    record OfOne(ExpectedYields yields, List<Promise> promises) implements Answer {
        @Override
        public String text(Unit unit, int decimals) {
            return YieldTable.of(yields, unit, decimals).promising(promises).text();
        }

        @Override
        public String csv(Unit unit, int decimals) {
            return YieldTable.of(yields, unit, decimals).promising(promises).csv();
        }

        @Override
        public String json(Unit unit) {
            return YieldJson.write(yields, unit, promises);
        }
    }

    /** What several carcasses give together. */
    record OfSeveral(CombinedYields yields) implements Answer {
        @Override
        public String text(Unit unit, int decimals) {
            return CombinedTable.of(yields, unit, decimals).text();
        }

        @Override
        public String csv(Unit unit, int decimals) {
            return CombinedTable.of(yields, unit, decimals).csv();
        }

        @Override
        public String json(Unit unit) {
            return CombinedJson.write(yields, unit);
        }
    }
}
