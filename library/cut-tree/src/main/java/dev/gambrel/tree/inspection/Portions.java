package dev.gambrel.tree.inspection;

import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.tree.Cut;
import dev.gambrel.tree.Part;
import dev.gambrel.tree.Portion;

/** Every portion of a tree with its address. */
public final class Portions {
    private Portions() {}

    /** Shows each portion, in the order written. */
    public static void each(Inspection inspection, Visit visit) {
        for (Site site : inspection.sites()) {
            for (Part part : site.parts()) {
                if (part instanceof Cut cut) {
                    for (Portion portion : cut.portions()) {
                        visit.portion(site.path().then(cut.name()).then(portion.name()), portion);
                    }
                }
            }
        }
    }

    /** What is done with a portion. */
    public interface Visit {
        /** Is shown a portion and its address. */
        void portion(TreePath path, Portion portion);
    }
}
