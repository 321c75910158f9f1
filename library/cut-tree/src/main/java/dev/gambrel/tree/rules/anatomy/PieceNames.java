package dev.gambrel.tree.rules.anatomy;

import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.text.NearestName;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.anatomy.OtherName;
import dev.gambrel.tree.anatomy.Piece;
import dev.gambrel.tree.anatomy.PieceCount;
import dev.gambrel.tree.inspection.Inspection;
import dev.gambrel.tree.inspection.PieceIndex;
import dev.gambrel.tree.inspection.Rule;
import dev.gambrel.tree.inspection.Site;
import dev.gambrel.tree.inspection.TreeCode;
import java.util.Arrays;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.Collectors;

/** A cut's name means one piece of the animal, and as many of it as the animal has. */
public final class PieceNames implements Rule {
    private static final int SHORTEST_TO_COMPARE = 4;
    private static final int MOST_TOLD = 8;

    @Override
    public void check(Inspection inspection, Consumer<Diagnostic> found) {
        Map<Site, Map<Piece, Site>> cutFrom = new IdentityHashMap<>();
        for (Site site : inspection.sites()) {
            if (!site.isCarcass() && !site.isWay()) {
                checkMeaning(site, inspection.pieces(), found);
                checkNearly(site, inspection, found);
                site.piece().ifPresent(known -> {
                    checkCount(site, known, inspection, found);
                    checkSaid(site, known, inspection, found);
                    Site earlier = cutFrom.computeIfAbsent(site.above(), above -> new IdentityHashMap<>())
                            .putIfAbsent(known.piece(), site);
                    if (earlier != null
                            && !earlier.cut().name().equals(site.cut().name())) {
                        found.accept(samePiece(site, earlier, known.piece()));
                    }
                });
            }
        }
    }

    /** A slip of one letter or a plural: a name that is truly the house's own is further off. */
    private static void checkNearly(Site site, Inspection inspection, Consumer<Diagnostic> found) {
        TradeName name = site.cut().name();
        boolean toldOtherwise = !site.cut().description().contents().isEmpty();
        if (toldOtherwise
                || name.key().length() < SHORTEST_TO_COMPARE
                || !inspection.pieces().piecesCalled(name).isEmpty()) {
            return;
        }
        NearestName.of(name, inspection.pieces().pieceNames())
                .filter(near -> isSlip(name, near))
                .ifPresent(near -> found.accept(Diagnostic.of(TreeCode.NEARLY_A_PIECE, site.at(Aspect.NAME))
                        .with("species", inspection.tree().species().name())
                        .with("cut", name)
                        .help("Did you mean “" + near + "”?")
                        .help("If it is a cut of the house's own, say what is in it: contains femur")));
    }

    private static boolean isSlip(TradeName name, TradeName near) {
        boolean sameLetters = sorted(name).equals(sorted(near));
        boolean plural = name.key().equals(near.key() + "s") || near.key().equals(name.key() + "s");
        return sameLetters
                || plural
                || Math.abs(name.key().length() - near.key().length()) <= 1
                        && name.key().charAt(0) == near.key().charAt(0)
                        && near.key().length() > SHORTEST_TO_COMPARE;
    }

    private static String sorted(TradeName name) {
        char[] letters = name.key().toCharArray();
        Arrays.sort(letters);
        return new String(letters);
    }

    private static Diagnostic samePiece(Site site, Site earlier, Piece piece) {
        return Diagnostic.of(TreeCode.SAME_PIECE_TWICE, site.at(Aspect.NAME))
                .with("cut", site.name())
                .with("other", earlier.name())
                .with("piece", piece.name())
                .related(earlier.at(Aspect.NAME), "the same piece under another name")
                .help("If it is meant to be another piece, give it the name of that piece or of the house.");
    }

    private static void checkMeaning(Site site, PieceIndex pieces, Consumer<Diagnostic> found) {
        TradeName name = site.cut().name();
        List<PieceIndex.Known> meanings = pieces.piecesCalled(name);
        if (meanings.size() > 1 && site.piece().isEmpty()) {
            Diagnostic finding =
                    Diagnostic.of(TreeCode.AMBIGUOUS_NAME, site.at(Aspect.NAME)).with("name", name);
            List<PieceIndex.Known> told = meanings.subList(0, Math.min(meanings.size(), MOST_TOLD));
            for (PieceIndex.Known meaning : told) {
                finding = finding.note(meaning(name, meaning));
            }
            if (meanings.size() > told.size()) {
                finding = finding.note("There are " + (meanings.size() - told.size()) + " more.");
            }
            String keep = told.stream()
                    .map(meaning -> "cut " + name + ", also " + meaning.piece().name())
                    .collect(Collectors.joining("; or "));
            found.accept(
                    finding.help("Write the name of the piece that you mean; until then nothing is known of its bones.")
                            .help("Or keep the name and say which piece it is: " + keep));
        }
    }

    private static String meaning(TradeName name, PieceIndex.Known meaning) {
        List<String> regions = meaning.piece().otherNames().stream()
                .filter(other -> other.name().equals(name))
                .map(OtherName::regions)
                .flatMap(List::stream)
                .toList();
        String where = regions.isEmpty() ? "" : " (" + String.join(", ", regions) + ")";
        return "“" + name + "”" + where + " is the " + meaning.piece().name() + ".";
    }

    private static void checkCount(
            Site site, PieceIndex.Known piece, Inspection inspection, Consumer<Diagnostic> found) {
        PieceCount written = site.cut().pieces();
        PieceCount known = piece.piece().pieces();
        if (written != PieceCount.NOT_STATED && known != PieceCount.NOT_STATED && written != known) {
            found.accept(Diagnostic.of(TreeCode.PIECE_COUNT_DIFFERS, site.at(Aspect.COUNT))
                    .with("cut", site.name())
                    .with("written", words(written))
                    .with("species", inspection.tree().species().name())
                    .with("known", known == PieceCount.ONE ? "one" : "two")
                    .help("If it is left whole as one piece, this is right; if not, correct the count."));
        }
    }

    /** Told once, at the uppermost pair: what lies below it follows. */
    private static void checkSaid(
            Site site, PieceIndex.Known piece, Inspection inspection, Consumer<Diagnostic> found) {
        boolean unsaid = !inspection.tree().isRequirement()
                && isPair(piece)
                && site.cut().pieces() == PieceCount.NOT_STATED
                && site.above().upward().stream().noneMatch(PieceNames::settlesCount);
        if (unsaid) {
            found.accept(Diagnostic.of(TreeCode.PAIR_UNSAID, site.at(Aspect.NAME))
                    .with("cut", site.name())
                    .with("species", inspection.tree().species().name())
                    .help("Say so after a comma: cut " + site.cut().name() + ", two per carcass")
                    .help("If both sides stay together as one piece, say: one per carcass"));
        }
    }

    private static boolean settlesCount(Site site) {
        return !site.isCarcass()
                && (site.cut().pieces() != PieceCount.NOT_STATED
                        || site.piece().filter(PieceNames::isPair).isPresent());
    }

    private static boolean isPair(PieceIndex.Known piece) {
        return piece.piece().pieces() == PieceCount.TWO;
    }

    private static String words(PieceCount count) {
        return count == PieceCount.ONE ? "one per carcass" : "two per carcass";
    }
}
