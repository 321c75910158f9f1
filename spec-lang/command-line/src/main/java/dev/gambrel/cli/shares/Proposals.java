package dev.gambrel.cli.shares;

import dev.gambrel.batches.sheets.SharesCode;
import dev.gambrel.batches.sheets.WeighSheet;
import dev.gambrel.cli.shares.report.Proposed;
import dev.gambrel.cli.shares.report.SharesReport;
import dev.gambrel.compiler.Compilation;
import dev.gambrel.compiler.origin.Origins;
import dev.gambrel.compiler.origin.ShareLine;
import dev.gambrel.compiler.restate.RestatedCut;
import dev.gambrel.compiler.restate.RestatedShare;
import dev.gambrel.compiler.restate.Restatement;
import dev.gambrel.compiler.restate.ShareRestater;
import dev.gambrel.compiler.source.Sources;
import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.limits.Limits;
import dev.gambrel.tree.Source;
import dev.gambrel.yields.houseshares.Proposal;
import dev.gambrel.yields.houseshares.ProposedShare;
import dev.gambrel.yields.testedcuts.FoundShare;
import dev.gambrel.yields.testedcuts.FoundShares;
import dev.gambrel.yields.testedcuts.Prior;
import dev.gambrel.yields.testedcuts.TestedPart;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntUnaryOperator;
import java.util.stream.Stream;

/**
 * The lines that a specification may state instead. One test alone proposes nothing, since what one carcass gave is not what the house
 * gives; with what is stated as a prior it may. A spread that the tests do not tell stays as it is written.
 */
final class Proposals {
    private static final int MOST_PLACES = 6;

    private final SharesReport report;
    private final Compilation compilation;
    private final Origins origins;
    private final IntUnaryOperator places;
    private final TestSource sources;
    private final List<Diagnostic> findings = new ArrayList<>();

    private Proposals(SharesReport report, Compilation compilation, IntUnaryOperator places) {
        this.report = report;
        this.compilation = compilation;
        this.origins = compilation.origins();
        this.places = places;
        this.sources = new TestSource(compilation.tree(), report.mean(), report.prior());
    }

    static Result<Proposed> of(SharesReport report, Compilation compilation, Sources files, IntUnaryOperator places) {
        Proposals proposals = new Proposals(report, compilation, places);
        List<RestatedCut> cuts = report.found().stream().flatMap(proposals::cut).toList();
        Result<Restatement> restated = ShareRestater.restate(compilation, files, Limits.DEFAULT, cuts);
        List<Diagnostic> findings = new ArrayList<>(proposals.findings);
        findings.addAll(restated.diagnostics());
        return new Result<>(restated.value().map(texts -> new Proposed(cuts, texts.texts())), findings);
    }

    private Stream<RestatedCut> cut(FoundShares shares) {
        List<WeighSheet> sheets = sheets(shares);
        boolean isPrior = report.prior() instanceof Prior.Stated && shares.ownWeight() < 1;
        if (isPrior && restsOn(shares, sheets)) {
            findings.add(Diagnostic.of(
                            SharesCode.COUNTED_TWICE,
                            new Place.InFile(compilation
                                    .texts()
                                    .get(compilation.texts().size() - 1)
                                    .name()))
                    .with("cut", SharesText.name(shares.cut().path()))
                    .help("Leave --prior out, or take it with the figures as they were before these tests."));
            return Stream.empty();
        }
        if (shares.number() < 2 && !isPrior) {
            return Stream.empty();
        }
        return Stream.of(new RestatedCut(shares.cut().path(), lines(shares), sources.of(sheets)));
    }

    private List<WeighSheet> sheets(FoundShares shares) {
        List<String> names =
                shares.cut().tests().tests().stream().map(test -> test.name()).toList();
        return report.sheets().stream()
                .filter(sheet -> names.contains(sheet.name()))
                .toList();
    }

    private boolean restsOn(FoundShares shares, List<WeighSheet> sheets) {
        return shares.cut().parts().stream()
                .filter(TestedPart::hasLine)
                .flatMap(part -> origins.of(part.path(), Aspect.SHARE).stream())
                .flatMap(origin -> origin.sources().stream())
                .anyMatch((Source source) -> TestSource.isOf(source, sheets));
    }

    private List<RestatedShare> lines(FoundShares shares) {
        Proposal proposal = shares.proposal(places.applyAsInt(placesOf(shares)));
        List<RestatedShare> lines = new ArrayList<>();
        for (int i = 0; i < shares.shares().size(); i++) {
            FoundShare found = shares.shares().get(i);
            if (found.part().hasLine()) {
                ProposedShare line = proposal.lines().get(i);
                lines.add(new RestatedShare(found.part().path(), line.percent(), spread(found, line)));
            }
        }
        return lines;
    }

    private static RestatedShare.Spread spread(FoundShare found, ProposedShare line) {
        boolean isTold = found.straying() instanceof FoundShare.Told told && !told.isDrowned();
        if (!isTold || line.spread() instanceof ProposedShare.NotKnown) {
            return new RestatedShare.AsWritten();
        }
        return new RestatedShare.Points(
                line.spread() instanceof ProposedShare.Lessened less
                        ? less.points()
                        : ((ProposedShare.AsFound) line.spread()).points());
    }

    /** As many as the finest share of the cut is written with, one at least. */
    private int placesOf(FoundShares shares) {
        return Stream.concat(shares.cut().parts().stream(), shares.cut().kept().stream())
                .filter(TestedPart::hasLine)
                .mapToInt(part -> placesOf(part.path()))
                .reduce(1, (one, other) -> Math.min(MOST_PLACES, Math.max(one, other)));
    }

    private int placesOf(TreePath part) {
        return origins.shareLine(part)
                .map(line -> {
                    if (line.share() instanceof ShareLine.PlusMinus figure) {
                        return decimals(line.text().slice(figure.mean()));
                    }
                    return line.share() instanceof ShareLine.MeanAlone figure
                            ? decimals(line.text().slice(figure.mean()))
                            : 0;
                })
                .orElse(0);
    }

    private static int decimals(String number) {
        int point = number.indexOf('.');
        return point < 0 ? 0 : number.length() - point - 1;
    }
}
