package dev.gambrel.tree.rules.choice;

import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.tree.Way;
import dev.gambrel.tree.choice.Choice;
import dev.gambrel.tree.inspection.ChoiceCode;
import dev.gambrel.tree.inspection.Inspection;
import dev.gambrel.tree.inspection.Rule;
import dev.gambrel.tree.inspection.Site;
import dev.gambrel.tree.inspection.TreeCode;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.function.Consumer;

/**
 * Without anyone's asking it is settled how a cut is worked: by one rule, by standing shares that are all of the pieces,
 * or by conditions.
 */
public final class SettledWays implements Rule {
    /** As shares of a cut may miss 100 %: half of the last place of figures printed to a tenth of a per cent. */
    private static final BigDecimal TOLERANCE = new BigDecimal("0.05");

    private static final BigDecimal ALL = BigDecimal.valueOf(100);

    @Override
    public void check(Inspection inspection, Consumer<Diagnostic> found) {
        for (Site site : inspection.sites()) {
            if (site.hasWays() && !site.isUnsure()) {
                checkSite(site, found);
            }
        }
    }

    private static void checkSite(Site site, Consumer<Diagnostic> found) {
        List<Way> rules = of(site, Choice.AsARule.class);
        List<Way> shared = of(site, Choice.OfPieces.class);
        List<Way> conditioned = of(site, Choice.When.class);
        if (rules.size() > 1) {
            found.accept(twoRules(site, rules));
        }
        if (!shared.isEmpty()) {
            rules.forEach(way -> found.accept(mixed(site, way, shared.get(0), "the rule")));
            conditioned.forEach(way -> found.accept(mixed(site, way, shared.get(0), "chosen by a condition")));
            checkShares(site, shared, rules.isEmpty() && conditioned.isEmpty(), found);
        } else if (rules.isEmpty() && conditioned.isEmpty()) {
            found.accept(Diagnostic.of(ChoiceCode.NO_RULE, site.at(Aspect.NAME))
                    .with("cut", site.name())
                    .help("Say after a comma which way is the rule: worked as "
                            + site.ways().get(0).name() + ", as a rule")
                    .help("Or give each way its share of the pieces, or a condition."));
        }
    }

    private static List<Way> of(Site site, Class<? extends Choice> kind) {
        return site.ways().stream().filter(way -> kind.isInstance(way.choice())).toList();
    }

    private static Diagnostic twoRules(Site site, List<Way> rules) {
        return Diagnostic.of(ChoiceCode.TWO_RULES, site.at(rules.get(1).work(), Aspect.CHOICE))
                .with("cut", site.name())
                .with("first", rules.get(0).name())
                .with("second", rules.get(1).name())
                .related(site.at(rules.get(0).work(), Aspect.CHOICE), "the first one")
                .help("Keep “as a rule” at one of them; the other is then worked when a run asks for it.");
    }

    private static Diagnostic mixed(Site site, Way way, Way shared, String what) {
        return Diagnostic.of(ChoiceCode.SHARES_AND_CONDITIONS, site.at(way.work(), Aspect.CHOICE))
                .with("cut", site.name())
                .with("way", way.name())
                .with("what", what)
                .related(site.at(shared.work(), Aspect.CHOICE), "a share of the pieces")
                .help("Give every way a share, or none of them.");
    }

    private static void checkShares(Site site, List<Way> shared, boolean areAll, Consumer<Diagnostic> found) {
        BigDecimal sum = BigDecimal.ZERO;
        boolean plausible = true;
        for (Way way : shared) {
            BigDecimal share = ((Choice.OfPieces) way.choice()).share().common();
            sum = sum.add(share, MathContext.DECIMAL128);
            if (share.signum() < 0 || share.compareTo(ALL) > 0) {
                plausible = false;
                found.accept(Diagnostic.of(TreeCode.SHARE_OUT_OF_RANGE, site.at(way.work(), Aspect.CHOICE))
                        .with("share", Quantity.rounded(share, Unit.PERCENT))
                        .help("It is a share of the pieces: nothing is less than none or more than all of them."));
            }
        }
        if (areAll && plausible && sum.subtract(ALL).abs().compareTo(TOLERANCE) > 0) {
            found.accept(Diagnostic.of(ChoiceCode.WAY_SHARES_NOT_100, site.at(Aspect.NAME))
                    .with("cut", site.name())
                    .with("sum", Quantity.rounded(sum, Unit.PERCENT))
                    .help("Correct a share, so that they add up to 100 %: every piece is worked in one way."));
        }
    }
}
