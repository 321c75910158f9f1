package dev.gambrel.compiler.lower;

import dev.gambrel.compiler.meaning.Clauses;
import dev.gambrel.compiler.meaning.FigureReader;
import dev.gambrel.compiler.meaning.JoinedNames;
import dev.gambrel.compiler.meaning.Located;
import dev.gambrel.compiler.meaning.MissingComma;
import dev.gambrel.compiler.syntax.Clause;
import dev.gambrel.compiler.syntax.Statement.Declaration;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.quantity.Dimension;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.Home;
import dev.gambrel.tree.Part;
import dev.gambrel.tree.Share;
import dev.gambrel.tree.SourceLean;
import dev.gambrel.tree.TrimRule;
import java.util.List;
import java.util.Optional;

/** Lines that name a part of a cut: bones, trims, losses, the rest, cuts, and ways of working. */
final class PartLowering {
    private static final String GLAND = " gland";

    private final Doubt doubt;
    private final CutLowering cuts;
    private final WayLowering ways;

    PartLowering(Doubt doubt) {
        this.doubt = doubt;
        this.cuts = new CutLowering(doubt, this);
        this.ways = new WayLowering(doubt, cuts);
    }

    /** The part that a line names; nothing for a line that names none. */
    Optional<Part> part(Located located, TreePath above) {
        Declaration line = located.line();
        if (MissingComma.isReported(located)) {
            doubt.about(above.then(name(line)));
        }
        return switch (line.keyword()) {
            case CUT_LINE -> Optional.of(cuts.cut(located, above));
            case WORKED_LINE -> Optional.of(ways.way(located, above));
            case BONE_LINE -> Optional.of(bone(located, above));
            case TRIM_LINE -> Optional.of(trim(located, above));
            case REMOVE_LINE -> Optional.of(removal(located, above));
            case SQUARE_LINE -> Optional.of(squareOff(located, above));
            case LOSS_LINE -> Optional.of(loss(located, above));
            case REST_LINE -> Optional.of(rest(located));
            default -> Optional.empty();
        };
    }

    /** The name that a line declares; a line too damaged to have one gets its keyword. */
    static TradeName name(Declaration line) {
        return line.name();
    }

    /** Where a line sends something, and how lean that is; what goes to no stream says nothing of its lean. */
    static Home home(Located located, Clauses clauses, Home otherwise) {
        return clauses.one(Clause.Arrow.class, "where it goes")
                .<Home>map(arrow -> new Home.ToStream(arrow.stream().text(), lean(located, clauses)))
                .orElse(otherwise);
    }

    private static SourceLean lean(Located located, Clauses clauses) {
        return clauses.one(Clause.Lean.class, "how lean it is")
                .flatMap(clause -> new FigureReader(located.report())
                        .expected(clause.figure(), Dimension.SHARE)
                        .<SourceLean>map(percent -> new SourceLean.Stated(percent, clause.judged())))
                .orElse(SourceLean.NOT_STATED);
    }

    private Share share(Located located, Clauses clauses, TreePath above) {
        ShareReader.Read read = new ShareReader(located.report()).take(clauses, above);
        if (read.inDoubt() || located.line().damaged()) {
            doubt.about(above.then(name(located.line())));
        }
        return read.share();
    }

    private Part bone(Located located, TreePath above) {
        Clauses clauses = new Clauses(located);
        TradeName name = name(located.line());
        Share share = share(located, clauses, above);
        Home home = home(located, clauses, homeUnlessDamaged(located));
        List<TradeName> after = BenchLowering.after(clauses);
        clauses.finish();
        return new Part.Bone(name, JoinedNames.of(name), share, home, after);
    }

    /** Where a line was damaged, that it names no home is no finding. */
    private static Home homeUnlessDamaged(Located located) {
        return located.line().damaged() ? new Home.Product() : new Home.NotStated();
    }

    private Part trim(Located located, TreePath above) {
        Clauses clauses = new Clauses(located);
        TrimRule rule = new FatLimits(located.report()).take(clauses);
        return trimmed(located, clauses, rule, above);
    }

    private Part removal(Located located, TreePath above) {
        Clauses clauses = new Clauses(located);
        TradeName tissue = name(located.line());
        boolean marked = clauses.one(Clause.GlandMark.class, "gland").isPresent();
        return trimmed(located, clauses, marked ? new TrimRule.GlandRemoval(tissue) : removal(tissue), above);
    }

    /** "prescapular gland" is a gland too. */
    private static TrimRule removal(TradeName tissue) {
        String text = tissue.text();
        return tissue.key().endsWith(GLAND)
                ? new TrimRule.GlandRemoval(TradeName.of(
                        text.substring(0, Math.max(0, text.length() - GLAND.length())), tissue))
                : new TrimRule.Removal(tissue);
    }

    private Part squareOff(Located located, TreePath above) {
        return trimmed(located, new Clauses(located), new TrimRule.SquareOff(), above);
    }

    private Part trimmed(Located located, Clauses clauses, TrimRule rule, TreePath above) {
        Share share = share(located, clauses, above);
        Home home = home(located, clauses, homeUnlessDamaged(located));
        List<TradeName> after = BenchLowering.after(clauses);
        clauses.finish();
        return new Part.Trim(name(located.line()), rule, share, home, after);
    }

    private Part loss(Located located, TreePath above) {
        Clauses clauses = new Clauses(located);
        Share share = share(located, clauses, above);
        clauses.finish();
        return new Part.Loss(name(located.line()), share);
    }

    private Part rest(Located located) {
        Clauses clauses = new Clauses(located);
        Home home = home(located, clauses, homeUnlessDamaged(located));
        clauses.finish();
        return new Part.Rest(home);
    }
}
