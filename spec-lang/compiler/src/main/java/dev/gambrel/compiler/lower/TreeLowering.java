package dev.gambrel.compiler.lower;

import dev.gambrel.compiler.code.MeaningCode;
import dev.gambrel.compiler.estimate.PredictorLowering;
import dev.gambrel.compiler.meaning.Clauses;
import dev.gambrel.compiler.meaning.Dates;
import dev.gambrel.compiler.meaning.FigureReader;
import dev.gambrel.compiler.meaning.Located;
import dev.gambrel.compiler.meaning.Notes;
import dev.gambrel.compiler.origin.WrittenLines;
import dev.gambrel.compiler.parse.FileReport;
import dev.gambrel.compiler.source.Catalogue;
import dev.gambrel.compiler.syntax.Clause;
import dev.gambrel.compiler.syntax.Keyword;
import dev.gambrel.compiler.syntax.RevisionClause;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.text.NearestName;
import dev.gambrel.text.Span;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.Basis;
import dev.gambrel.tree.BasisStep;
import dev.gambrel.tree.Carcass;
import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.Part;
import dev.gambrel.tree.Side;
import dev.gambrel.tree.Source;
import dev.gambrel.tree.Specification;
import dev.gambrel.tree.Standing;
import dev.gambrel.tree.Stream;
import dev.gambrel.tree.WeightBand;
import dev.gambrel.tree.anatomy.OtherName;
import dev.gambrel.tree.anatomy.Species;
import dev.gambrel.tree.choice.Grade;
import dev.gambrel.tree.estimate.Predictors;
import dev.gambrel.tree.term.Term;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** All lines together into one tree. Where something is missing or unreadable a stand-in takes its place, after a finding. */
final class TreeLowering {
    private static final int MOST_REVISIONS = 999_999;

    private final Program program;
    private final Doubt doubt;
    private final List<Located> steps = new ArrayList<>();
    private final AllowanceLowering allowances;

    TreeLowering(Program program, Doubt doubt) {
        this.program = program;
        this.doubt = doubt;
        this.allowances = new AllowanceLowering(program);
    }

    CutTree tree() {
        Optional<Located> line = program.title();
        Specification specification = line.map(this::specification).orElseGet(this::noSpecification);
        Species species = species(line);
        return new CutTree(
                specification,
                carcass(line.isPresent()),
                species,
                streams(),
                sources(),
                parts(line.isPresent()),
                notes());
    }

    /** The lines that the tree was made from, with the places of clauses that a revision replaced. */
    WrittenLines lines(Map<Span, Span> earlier) {
        return new WrittenLines(
                program.lines(),
                program.titles(),
                program.parts(),
                program.terms(),
                steps,
                allowances.lines(),
                earlier);
    }

    private Specification noSpecification() {
        FileReport main = program.main();
        main.add(main.finding(MeaningCode.NO_SPECIFICATION, main.beginning())
                .help("Write a line such as: specification \"House hogget\" revision 1 for sheep"));
        return new Specification("", 1, Standing.NOT_STATED, allowances.allowances());
    }

    private Specification specification(Located located) {
        Clauses clauses = new Clauses(located);
        String title = clauses.one(Clause.Text.class, "what it is called")
                .map(Clause.Text::text)
                .orElse("");
        int revision = clauses.one(Clause.Numbers.class, "which revision it is")
                .flatMap(number ->
                        new FigureReader(located.report()).count(number.first(), number.span(), 1, MOST_REVISIONS))
                .orElse(1);
        clauses.all(Clause.ForSpecies.class);
        Standing standing = standing(clauses, located.report());
        clauses.finish();
        Side side = located.line().keyword() == Keyword.REQUIREMENT_LINE ? Side.BUYER : Side.HOUSE;
        return new Specification(title, revision, standing, allowances.allowances(), side, terms());
    }

    private static Standing standing(Clauses clauses, FileReport report) {
        int replaces = clauses.one(RevisionClause.Replaces.class, "what it replaces")
                .flatMap(clause -> new FigureReader(report).count(clause.number(), clause.span(), 1, MOST_REVISIONS))
                .orElse(0);
        Standing.From from = clauses.one(RevisionClause.InForce.class, "from when it is in force")
                .flatMap(clause -> Dates.read(clause, report))
                .<Standing.From>map(Standing.From.Day::new)
                .orElse(new Standing.From.NotStated());
        String because = clauses.one(RevisionClause.Because.class, "why it was made")
                .map(RevisionClause.Because::words)
                .orElse("");
        return new Standing(replaces, from, because);
    }

    private Species species(Optional<Located> specification) {
        List<Species> declared = program.all(Keyword.SPECIES_LINE).stream()
                .map(SpeciesLowering::lower)
                .toList();
        checkOneEach(program.all(Keyword.SPECIES_LINE));
        if (specification.isEmpty()) {
            return declared.stream().findFirst().orElse(Species.unknown(TradeName.of("animal")));
        }
        Clauses clauses = new Clauses(specification.get());
        return clauses.all(Clause.ForSpecies.class).stream()
                .findFirst()
                .map(written -> find(written, declared, specification.get().report()))
                .orElse(Species.unknown(TradeName.of("animal")));
    }

    private static void checkOneEach(List<Located> species) {
        Map<TradeName, Located> first = new HashMap<>();
        for (Located second : species) {
            Located earlier = first.putIfAbsent(PartLowering.name(second.line()), second);
            if (earlier != null) {
                Diagnostic finding = second.report()
                        .finding(MeaningCode.DECLARED_TWICE, second.line().head())
                        .with("line", second.line().keyword().word() + " " + PartLowering.name(second.line()));
                second.report()
                        .add(finding.related(earlier.report().at(earlier.line().head()), "the first one")
                                .help("Give one of the two another name."));
            }
        }
    }

    private static Species find(Clause.ForSpecies written, List<Species> declared, FileReport report) {
        TradeName name = written.name().text();
        Optional<Species> species =
                declared.stream().filter(s -> isCalled(s, name)).findFirst();
        if (species.isEmpty()) {
            List<TradeName> known = declared.stream().map(Species::name).toList();
            Diagnostic finding =
                    report.finding(MeaningCode.UNKNOWN_SPECIES, written.span()).with("species", name);
            report.add(NearestName.of(name, known)
                    .map(near -> report.didYouMean(finding, written.span(), near))
                    .orElse(finding.help(fromCatalogue(name)))
                    .help("Or declare the animal in a species line of your own."));
        }
        return species.orElse(Species.unknown(name));
    }

    private static String fromCatalogue(TradeName species) {
        return Catalogue.species().contains(species)
                ? "Take it from the catalogue with: use \"" + Catalogue.PREFIX + species.key() + "\""
                : "The catalogue has: "
                        + String.join(
                                ", ",
                                Catalogue.species().stream()
                                        .map(TradeName::text)
                                        .toList()) + ".";
    }

    private static boolean isCalled(Species species, TradeName name) {
        return species.name().equals(name)
                || species.otherNames().stream().map(OtherName::name).anyMatch(name::equals);
    }

    private Carcass carcass(boolean isSpecification) {
        List<BasisStep> lowered = CarcassLowering.steps(program.all(Keyword.FROM_LINE), steps);
        List<Grade> grades =
                program.all(Keyword.GRADE_LINE).stream().map(WayLowering::grade).toList();
        Optional<Located> line = program.only(Keyword.CARCASS_LINE);
        if (line.isEmpty() && isSpecification && !isRequirement()) {
            FileReport main = program.main();
            Span at = program.titles().get(0).line().keywordSpan();
            main.add(main.finding(MeaningCode.NO_CARCASS, at)
                    .help("Write a line such as: carcass cold, skin off, 20 kg to 24 kg"));
        }
        Predictors predictors = predictors();
        return line.map(located -> CarcassLowering.carcass(located, lowered, grades, predictors))
                .orElse(new Carcass(Basis.COLD, List.of(), new WeightBand.NotStated(), lowered, grades, predictors));
    }

    private boolean isRequirement() {
        return program.titles().stream()
                .findFirst()
                .filter(title -> title.line().keyword() == Keyword.REQUIREMENT_LINE)
                .isPresent();
    }

    private Predictors predictors() {
        PredictorLowering.Read read =
                PredictorLowering.read(program.all(Keyword.MEASURE_LINE), program.all(Keyword.ESTIMATE_LINE));
        if (read.inDoubt()) {
            doubt.aboutEstimates();
        }
        return read.predictors();
    }

    private List<Stream> streams() {
        return program.all(Keyword.STREAM_LINE).stream()
                .map(StreamLowering::stream)
                .toList();
    }

    private List<Source> sources() {
        return program.all(Keyword.SOURCE_LINE).stream()
                .map(StreamLowering::source)
                .toList();
    }

    private List<Part> parts(boolean isSpecification) {
        PartLowering lowering = new PartLowering(doubt);
        List<Part> parts = new ArrayList<>();
        program.parts().forEach(line -> lowering.part(line, TreePath.ROOT).ifPresent(parts::add));
        if (parts.isEmpty() && isSpecification && !program.hasUnreadable()) {
            Located specification = program.titles().get(0);
            specification
                    .report()
                    .add(
                            specification
                                    .report()
                                    .finding(
                                            MeaningCode.NO_CUTS,
                                            specification.line().keywordSpan())
                                    .help(
                                            isRequirement()
                                                    ? "Write what is asked for, such as: cut leg, boneless"
                                                    : "Write what the carcass is divided into, such as: cut leg, two per carcass, 33 % ± 0.9 %"));
        }
        if (program.hasUnreadable()) {
            doubt.aboutSomethingIn(TreePath.ROOT);
        }
        return parts;
    }

    private List<Term> terms() {
        List<Term> terms = new ArrayList<>();
        for (Located line : program.terms()) {
            List<Term> read = TermLowering.terms(line);
            terms.addAll(read);
            if (read.isEmpty() || line.line().damaged()) {
                doubt.aboutSomethingIn(TreePath.ROOT);
            }
        }
        return terms;
    }

    private List<String> notes() {
        return program.all(Keyword.NOTE_LINE).stream()
                .flatMap(line -> Notes.read(line).stream())
                .toList();
    }
}
