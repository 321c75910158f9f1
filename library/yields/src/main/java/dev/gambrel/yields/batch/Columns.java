package dev.gambrel.yields.batch;

import dev.gambrel.text.TradeName;
import dev.gambrel.tree.Basis;
import dev.gambrel.tree.inspection.Vocabulary;
import dev.gambrel.tree.inspection.Vocabulary.Meaning;
import java.util.List;

/**
 * In which column stands what an equation names.
 *
 * @param vocabulary what names stand for
 * @param weighed the basis of the carcass weight
 * @param readings the names of the columns of readings
 */
record Columns(Vocabulary vocabulary, Basis weighed, List<TradeName> readings) {
    static final int CARCASS_WEIGHT = -1;

    int column(TradeName name) {
        boolean isWeight = vocabulary.meaning(name).orElse(null) instanceof Meaning.Weighed on && on.basis() == weighed;
        return isWeight ? CARCASS_WEIGHT : readings.indexOf(Readings.plain(name));
    }
}
