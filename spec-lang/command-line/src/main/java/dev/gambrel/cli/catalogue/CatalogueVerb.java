package dev.gambrel.cli.catalogue;

import dev.gambrel.cli.argument.FormArgument;
import dev.gambrel.cli.argument.FormArgument.Form;
import dev.gambrel.cli.json.CatalogueJson;
import dev.gambrel.cli.terminal.Cautions;
import dev.gambrel.cli.terminal.ExitStatus;
import dev.gambrel.cli.terminal.Terminal;
import dev.gambrel.cli.verb.Verb;
import dev.gambrel.cli.verb.WrongUsage;
import dev.gambrel.compiler.catalogue.CatalogueCut;
import dev.gambrel.compiler.catalogue.CatalogueSpecies;
import dev.gambrel.compiler.source.Catalogue;
import dev.gambrel.text.NearestName;
import dev.gambrel.text.TradeName;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParseResult;

/** Lists the species of the catalogue, the pieces of one, or all that is known of one piece. */
public final class CatalogueVerb implements Verb {
    /** What it is called on the command line. */
    public static final String NAME = "catalogue";

    /** A species that was asked for, and what was said after it. */
    private record Asked(CatalogueSpecies species, String cut) {}

    @Override
    public String name() {
        return NAME;
    }

    @Override
    public CommandSpec spec() {
        CommandSpec spec = CommandSpec.create();
        spec.usageMessage()
                .description("List the species that come with the program, the pieces of one,"
                        + " or all that is known of one piece.")
                .footer("", "Example: gambrel catalogue sheep best end");
        spec.addOption(FormArgument.TEXT_OR_JSON.option());
        spec.addPositional(PositionalParamSpec.builder()
                .paramLabel("NAME")
                .arity("0..*")
                .type(String[].class)
                .description("A species, then a piece by any name that it has anywhere.")
                .build());
        return spec;
    }

    @Override
    public ExitStatus run(ParseResult parsed, Terminal terminal) {
        boolean asJson = FormArgument.TEXT_OR_JSON.form(parsed) == Form.JSON;
        List<String> words = words(parsed.matchedPositionalValue(0, new String[0]));
        terminal.out().print(words.isEmpty() ? list(asJson) : answer(asked(words), asJson));
        return ExitStatus.FINE;
    }

    private static List<String> words(String[] arguments) {
        return String.join(" ", arguments)
                .strip()
                .lines()
                .flatMap(line -> List.of(line.split("\\s+")).stream())
                .filter(word -> !word.isEmpty())
                .toList();
    }

    private static String list(boolean asJson) {
        List<CatalogueSpecies> all = Catalogue.species().stream()
                .map(CatalogueSpecies::named)
                .flatMap(Optional::stream)
                .toList();
        return asJson ? CatalogueJson.list(all) : CatalogueText.list(all);
    }

    private static String answer(Asked asked, boolean asJson) {
        CatalogueSpecies species = asked.species();
        if (asked.cut().isEmpty()) {
            return asJson ? CatalogueJson.species(species) : CatalogueText.species(species);
        }
        List<CatalogueCut> cuts =
                TradeName.isAcceptable(asked.cut()) ? species.cutsCalled(TradeName.of(asked.cut())) : List.of();
        if (cuts.isEmpty()) {
            throw noSuchCut(asked);
        }
        return asJson ? CatalogueJson.cuts(species, asked.cut(), cuts) : pages(asked, cuts);
    }

    private static String pages(Asked asked, List<CatalogueCut> cuts) {
        String several = cuts.size() == 1
                ? ""
                : "“" + asked.cut() + "” means " + cuts.size()
                        + " pieces; who says so of which stands beside the name.\n\n";
        return several
                + cuts.stream().map(cut -> CutText.of(asked.species(), cut)).collect(Collectors.joining("\n"))
                + "\nA share is a mean in print, of both sides together, of carcasses cut as its source cuts them;"
                + " yours may be\ncut elsewhere. What is from memory or judgement is never held against a cut.\n"
                + Cautions.TEXT;
    }

    /** The longest of the first words that name a species, so that nothing need be put in quotation marks. */
    private static Asked asked(List<String> words) {
        return firstOf(words, CatalogueSpecies::named)
                .or(() -> firstOf(words, CatalogueSpecies::called))
                .orElseThrow(() -> noSuchSpecies(words));
    }

    private static Optional<Asked> firstOf(
            List<String> words, Function<TradeName, Optional<CatalogueSpecies>> species) {
        return IntStream.iterate(words.size(), n -> n > 0, n -> n - 1)
                .mapToObj(n -> name(words.subList(0, n))
                        .flatMap(species)
                        .map(found -> new Asked(found, String.join(" ", words.subList(n, words.size())))))
                .flatMap(Optional::stream)
                .findFirst();
    }

    private static Optional<TradeName> name(List<String> words) {
        String text = String.join(" ", words);
        return TradeName.isAcceptable(text) ? Optional.of(TradeName.of(text)) : Optional.empty();
    }

    private static WrongUsage noSuchSpecies(List<String> words) {
        String known = Catalogue.species().stream().map(TradeName::text).collect(Collectors.joining(", "));
        String near = NearestName.of(words.get(0), Catalogue.species())
                .map(name -> " Did you mean “" + name + "”?")
                .orElse("");
        return new WrongUsage(
                "The catalogue has no species “" + words.get(0) + "”." + near + " It has: " + known + ".");
    }

    private static WrongUsage noSuchCut(Asked asked) {
        String near = asked.species()
                .nearestCut(asked.cut())
                .map(name -> " Did you mean “" + name + "”?")
                .orElse("");
        TradeName species = asked.species().species().name();
        return new WrongUsage("The " + species + " of the catalogue has no piece “" + asked.cut() + "”." + near
                + " All that it has: gambrel catalogue " + species);
    }
}
