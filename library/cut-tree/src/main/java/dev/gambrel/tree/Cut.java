package dev.gambrel.tree;

import dev.gambrel.text.TradeName;
import dev.gambrel.tree.anatomy.PieceCount;
import java.util.List;

/**
 * A piece of meat with a name.
 *
 * <p>A cut is <em>divided</em> when it has cuts or a rest among its parts: then its parts are all of it. Otherwise
 * trims, bones and losses come off, and what they leave is the cut itself, trimmed. A third kind of cut is worked in
 * ways: its parts are {@link Way}s, each of which is divided or trimmed by itself.
 *
 * @param name the trade name
 * @param pieces how many to a carcass
 * @param share per cent of the cut above, both pieces of a pair together
 * @param description what it is and how it is parted from its neighbours
 * @param parts what leaves it, in the order written
 * @param home where the trimmed cut goes; of no account when it is divided
 * @param portions what the trimmed cut is portioned into
 */
public record Cut(
        TradeName name,
        PieceCount pieces,
        Share share,
        Description description,
        List<Part> parts,
        Home home,
        List<Portion> portions)
        implements Part {
    /** Copies the lists. */
    public Cut {
        parts = List.copyOf(parts);
        portions = List.copyOf(portions);
    }

    @Override
    public List<TradeName> after() {
        return description.bench().after();
    }

    /**
     * Whether the parts are all of it.
     *
     * @return true if there is a cut or a rest among the parts
     */
    public boolean isDivided() {
        for (Part part : parts) {
            if (part instanceof Cut || part instanceof Rest) {
                return true;
            }
        }
        return false;
    }
}
