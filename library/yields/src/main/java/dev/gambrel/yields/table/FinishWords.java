package dev.gambrel.yields.table;

import dev.gambrel.tree.Portion;
import dev.gambrel.tree.portion.Finish;
import dev.gambrel.tree.portion.Precedence;
import java.util.ArrayList;
import java.util.List;

/** What is done with a portion, in a few words. */
final class FinishWords {
    private FinishWords() {}

    static String of(Portion portion) {
        List<String> words = new ArrayList<>();
        if (!portion.slicing().direction().isEmpty()) {
            words.add(portion.slicing().direction());
        }
        if (portion.acceptance().precedence() != Precedence.NOT_STATED) {
            words.add(portion.acceptance().precedence().words() + " rules");
        }
        if (portion.endPieces() instanceof Portion.EndPieces.Weighed ends) {
            words.add("end pieces " + ends.weight() + " to " + PartLines.goesTo(ends.home()));
        } else if (portion.endPieces() instanceof Portion.EndPieces.Sent ends) {
            words.add("end pieces to " + PartLines.goesTo(ends.home()));
        }
        Finish.Binding binding = portion.finish().binding();
        if (binding instanceof Finish.Binding.Tied tied) {
            words.add("tied " + tied.times() + " times");
        } else if (binding instanceof Finish.Binding.TiedEvery every) {
            words.add("tied every " + every.spacing());
        } else if (binding instanceof Finish.Binding.Netted net) {
            words.add("netted " + net.size());
        }
        if (portion.finish().pack() instanceof Finish.Pack.Together pack) {
            words.add(pack.number() + " to a " + pack.container());
        }
        portion.finish().tares().forEach(tare -> words.add(tare.what() + " " + tare.weight() + " tare"));
        return String.join(", ", words);
    }
}
