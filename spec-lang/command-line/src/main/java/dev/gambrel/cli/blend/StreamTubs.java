package dev.gambrel.cli.blend;

import dev.gambrel.blends.Price;
import dev.gambrel.blends.Tub;
import dev.gambrel.cli.verb.WrongUsage;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.Specification;
import dev.gambrel.tree.Stream;
import dev.gambrel.tree.term.Judged;
import dev.gambrel.yields.ExpectedYields;
import dev.gambrel.yields.StreamYield;
import dev.gambrel.yields.lean.Lean;
import dev.gambrel.yields.lean.StreamLean;
import dev.gambrel.yields.lean.StreamLeans;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The streams of a specification as tubs: what so many carcasses should give of each, as lean as its sources make it, or else as
 * lean as it is meant to be.
 *
 * @param tubs the streams that can be blended
 * @param leftOut the others, each with the reason
 * @param gives what is told of where they come from; empty where there are none
 */
record StreamTubs(List<Tub> tubs, List<String> leftOut, List<String> gives) {
    /** No specification was named. */
    static final StreamTubs NONE = new StreamTubs(List.of(), List.of(), List.of());

    /** Copies the lists. */
    StreamTubs {
        tubs = List.copyOf(tubs);
        leftOut = List.copyOf(leftOut);
        gives = List.copyOf(gives);
    }

    static StreamTubs of(ExpectedYields yields, int carcasses, List<TradeName> wanted, Judged judged) {
        wanted.forEach(name -> known(yields, name));
        List<Tub> tubs = new ArrayList<>();
        List<String> leftOut = new ArrayList<>();
        List<StreamLean> leans = StreamLeans.of(yields);
        for (int i = 0; i < leans.size(); i++) {
            StreamYield stream = yields.streams().get(i);
            TradeName name = stream.stream().name();
            if (wanted.isEmpty() ? stream.stream().kind() == Stream.Kind.SALEABLE : wanted.contains(name)) {
                double kilograms = stream.weight().mean() * carcasses;
                Optional<Lean> lean = lean(leans.get(i));
                String why = why(lean, kilograms, judged);
                if (why.isEmpty()) {
                    tubs.add(new Tub(name, lean.orElseThrow(), kilograms, Price.NOT_STATED));
                } else {
                    leftOut.add(name + ": " + why);
                }
            }
        }
        return new StreamTubs(tubs, leftOut, gives(yields, carcasses));
    }

    private static List<String> gives(ExpectedYields yields, int carcasses) {
        Specification specification = yields.tree().specification();
        String carcass = carcasses == 1 ? "1 carcass of " : carcasses + " carcasses, each of ";
        String from = "Streams are what " + carcass + weight(yields.given().mass()) + ", weighed "
                + yields.given().basis().words() + ", should give by " + specification.title() + ", revision "
                + specification.revision() + ".";
        return yields.portions().isEmpty()
                ? List.of(from)
                : List.of(from, "What portioning leaves over is not in them.");
    }

    /** The same tubs with what they would fetch. */
    StreamTubs at(Map<TradeName, Price> prices) {
        prices.keySet().stream()
                .filter(name -> tubs.stream().noneMatch(tub -> tub.name().equals(name)))
                .findFirst()
                .ifPresent(name -> {
                    throw new WrongUsage("A price is given for “" + name + "”, and that stream does not go in.");
                });
        return new StreamTubs(
                tubs.stream()
                        .map(tub -> new Tub(
                                tub.name(),
                                tub.lean(),
                                tub.kilograms(),
                                prices.getOrDefault(tub.name(), Price.NOT_STATED)))
                        .toList(),
                leftOut,
                gives);
    }

    private static String weight(Quantity mass) {
        return mass.amount().stripTrailingZeros().toPlainString() + " "
                + mass.unit().symbol();
    }

    private static void known(ExpectedYields yields, TradeName wanted) {
        if (yields.streams().stream().noneMatch(each -> each.stream().name().equals(wanted))) {
            throw new WrongUsage("There is no stream “" + wanted + "” in the specification.");
        }
    }

    private static Optional<Lean> lean(StreamLean stream) {
        if (stream.found() instanceof StreamLean.Found.Known known) {
            return Optional.of(known.lean());
        }
        return stream.stream().lean() instanceof Stream.Lean.Stated stated
                ? Optional.of(Lean.of(stated.percent().value(), stated.judged()))
                : Optional.empty();
    }

    private static String why(Optional<Lean> lean, double kilograms, Judged judged) {
        if (!(kilograms > 0)) {
            return "nothing goes into it but what portioning may leave over";
        }
        if (lean.isEmpty()) {
            return "nothing says how lean it is";
        }
        if (lean.get().judged() == judged) {
            return "";
        }
        return lean.get().judged() == Judged.NOT_STATED
                ? "its lean is not said to be visual or chemical"
                : "its lean is " + lean.get().judged().words();
    }
}
