package dev.gambrel.yields.conformance.clause;

import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.BoneState;
import dev.gambrel.tree.Carcass;
import dev.gambrel.tree.Cut;
import dev.gambrel.tree.Description;
import dev.gambrel.tree.Landmark;
import dev.gambrel.tree.Part;
import dev.gambrel.tree.Separation;
import dev.gambrel.tree.TrimRule;
import dev.gambrel.tree.WeightBand;
import dev.gambrel.tree.anatomy.AnatomicalCount;
import dev.gambrel.tree.bench.Bench;
import dev.gambrel.tree.bench.Matching;
import dev.gambrel.tree.bench.Treatment;
import dev.gambrel.tree.portion.Limit;
import dev.gambrel.tree.portion.Outside;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** Takes out of a carcass or a cut what is laid down of it, each clause by itself, in the order of the tree. */
public final class CutClauses {
    private static final Outside NONE = new Outside.None();

    private final TreePath path;
    private final List<Stated> stated = new ArrayList<>();

    private CutClauses(TreePath path) {
        this.path = path;
    }

    /**
     * What is laid down of a carcass: its weight band, what is on and off.
     *
     * @param carcass the carcass
     * @return each clause with its place
     */
    public static List<Stated> ofCarcass(Carcass carcass) {
        CutClauses clauses = new CutClauses(TreePath.ROOT);
        if (carcass.band() instanceof WeightBand.Stated band) {
            clauses.limited(Quality.CARCASS_WEIGHT, new Limit.Between(band.low(), band.high()), Aspect.BAND, 0);
        }
        for (int i = 0; i < carcass.dressing().size(); i++) {
            String words = carcass.dressing().get(i);
            if (TradeName.isAcceptable(words)) {
                clauses.add(new Clause.Carried(Quality.DRESSING, TradeName.of(words)), Aspect.DRESSING, i);
            }
        }
        return clauses.stated;
    }

    /**
     * What is laid down of a cut in its own line and braces; not of its portions and ways.
     *
     * @param cut the cut
     * @param path its path
     * @return each clause with its place
     */
    public static List<Stated> ofCut(Cut cut, TreePath path) {
        CutClauses clauses = new CutClauses(path);
        clauses.description(cut.description());
        for (Part part : cut.parts()) {
            if (part instanceof Part.Trim trim) {
                clauses.trim(trim);
            }
        }
        clauses.stated.addAll(SupplyClauses.of(cut.description().terms(), path));
        return clauses.stated;
    }

    private void description(Description description) {
        if (description.boneState() != BoneState.NOT_STATED) {
            add(new Clause.State(Quality.BONE_STATE, description.boneState().words()), Aspect.BONE_STATE, 0);
        }
        bench(description.bench());
        for (int i = 0; i < description.references().size(); i++) {
            add(new Clause.Numbered(description.references().get(i)), Aspect.REFERENCE, i);
        }
        separations(description.separations(), description.bench().ribs());
    }

    private void bench(Bench bench) {
        if (bench.ribs().isStated()) {
            ribs(bench.ribs().least(), bench.ribs().most(), Aspect.RIB_COUNT, 0);
        }
        if (bench.matching() instanceof Matching.Within within) {
            limited(Quality.MATCHING, new Limit.AtMost(within.difference()), Aspect.MATCHING, 0);
        } else if (bench.matching() instanceof Matching.Alike) {
            add(new Clause.State(Quality.MATCHING, "alike"), Aspect.MATCHING, 0);
        }
        for (int i = 0; i < bench.treatments().size(); i++) {
            Treatment treatment = bench.treatments().get(i);
            add(new Clause.Tissue(treatment.tissue(), treatment.kind().words()), Aspect.TREATMENT, i);
        }
    }

    private void ribs(int least, int most, Aspect aspect, int index) {
        limited(Quality.RIB_COUNT, new Limit.Between(number(least), number(most)), aspect, index);
    }

    private static Quantity number(int number) {
        return new Quantity(BigDecimal.valueOf(number), Unit.NUMBER);
    }

    private void separations(List<Separation> separations, AnatomicalCount counted) {
        for (int i = 0; i < separations.size(); i++) {
            Landmark landmark = separations.get(i).landmark();
            if (landmark instanceof Landmark.Ribs ribs && !counted.isStated()) {
                int count = ribs.last() - ribs.first() + 1;
                ribs(count, count, Aspect.SEPARATION, i);
            }
            if (!(landmark instanceof Landmark.NotStated)) {
                add(new Clause.Parted(landmark), Aspect.SEPARATION, i);
            }
        }
    }

    private void trim(Part.Trim trim) {
        TreePath at = path.then(trim.name());
        if (trim.rule() instanceof TrimRule.FatCover cover) {
            fat(cover, at);
        } else if (trim.rule() instanceof TrimRule.Removal removal) {
            removed(removal.tissue(), at);
        } else if (trim.rule() instanceof TrimRule.GlandRemoval removal) {
            removed(TradeName.of(removal.gland() + " gland", removal.gland()), at);
        }
    }

    private void removed(TradeName tissue, TreePath at) {
        stated.add(new Stated(new Clause.Tissue(tissue, "removed"), new Place.InTree(at, Aspect.NAME)));
    }

    private void fat(TrimRule.FatCover cover, TreePath at) {
        for (int i = 0; i < cover.limits().size(); i++) {
            TrimRule.FatLimit limit = cover.limits().get(i);
            Quality quality =
                    limit.where() == TrimRule.Where.ON_AVERAGE ? Quality.FAT_AVERAGE : Quality.FAT_AT_ANY_POINT;
            String measured = cover.finish().measured();
            Clause.How how = new Clause.How(cover.finish().planed() ? "planed" : "", measured);
            Clause clause = new Clause.Limited(quality, new Limit.AtMost(limit.atMost()), NONE, how);
            stated.add(new Stated(clause, new Place.InTree(at, Aspect.LIMIT, i)));
        }
        if (cover.finish().practicallyFree()) {
            Clause clause = new Clause.State(Quality.FAT_FINISH, "practically free");
            stated.add(new Stated(clause, new Place.InTree(at, Aspect.NAME)));
        }
    }

    private void limited(Quality quality, Limit limit, Aspect aspect, int index) {
        add(new Clause.Limited(quality, limit, NONE, Clause.How.NOT_SAID), aspect, index);
    }

    private void add(Clause clause, Aspect aspect, int index) {
        stated.add(new Stated(clause, new Place.InTree(path, aspect, index)));
    }
}
