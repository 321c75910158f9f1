package dev.gambrel.compiler.lower;

import dev.gambrel.compiler.meaning.Clauses;
import dev.gambrel.compiler.meaning.FigureReader;
import dev.gambrel.compiler.parse.FileReport;
import dev.gambrel.compiler.syntax.PortionClause;
import dev.gambrel.quantity.Dimension;
import dev.gambrel.quantity.Expected;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.Home;
import dev.gambrel.tree.Portion;
import dev.gambrel.tree.portion.Finish;
import dev.gambrel.tree.portion.Measure;
import dev.gambrel.tree.portion.Slicing;
import java.util.ArrayList;
import java.util.List;

/** What a portion line says of slicing, tying and packing. */
final class FinishReader {
    /** No more than this is counted. */
    static final int MOST = 9999;

    private final FigureReader figures;

    FinishReader(FileReport report) {
        this.figures = new FigureReader(report);
    }

    Slicing slicing(Clauses clauses) {
        Measure kerf = clauses.one(PortionClause.Kerf.class, "what a cut takes")
                .flatMap(said -> figures.quantity(said.width(), Dimension.LENGTH))
                .<Measure>map(Measure.Stated::new)
                .orElse(new Measure.NotStated());
        Slicing.Length length = clauses.one(PortionClause.Length.class, "what length is sliced")
                .flatMap(said -> figures.expected(said.figure(), Dimension.LENGTH))
                .<Slicing.Length>map(Slicing.Length.Stated::new)
                .orElse(new Slicing.Length.NotStated());
        String direction = clauses.one(PortionClause.Direction.class, "across or along what")
                .map(PortionClause.Direction::words)
                .orElse("");
        return new Slicing(kerf, length, direction);
    }

    Finish finish(Clauses clauses) {
        Finish.Binding tied = clauses.one(PortionClause.Tied.class, "how it is tied")
                .flatMap(said -> figures.count(said.times(), said.span(), 0, MOST))
                .<Finish.Binding>map(Finish.Binding.Tied::new)
                .orElseGet(() -> held(clauses));
        Finish.Pack pack = clauses.one(PortionClause.Packed.class, "how it is packed")
                .flatMap(said -> figures.count(said.number(), said.span(), 0, MOST)
                        .<Finish.Pack>map(number -> new Finish.Pack.Together(
                                number, withoutArticle(said.container().text()))))
                .orElse(new Finish.Pack.NotStated());
        return new Finish(tied, pack, tares(clauses));
    }

    private Finish.Binding held(Clauses clauses) {
        return clauses.one(PortionClause.Held.class, "how it is tied or netted")
                .flatMap(said -> figures.quantity(said.length(), Dimension.LENGTH)
                        .<Finish.Binding>map(length -> said.netted()
                                ? new Finish.Binding.Netted(length)
                                : new Finish.Binding.TiedEvery(length)))
                .orElse(new Finish.Binding.NotStated());
    }

    /** "a vacuum bag" is a vacuum bag. */
    private static TradeName withoutArticle(TradeName container) {
        boolean hasArticle = container.key().startsWith("a ");
        return hasArticle ? TradeName.of(container.text().substring(2), container) : container;
    }

    private List<Finish.Tare> tares(Clauses clauses) {
        List<Finish.Tare> tares = new ArrayList<>(2);
        for (PortionClause.Tare said : clauses.all(PortionClause.Tare.class)) {
            figures.quantity(said.weight(), Dimension.WEIGHT)
                    .ifPresent(weight -> tares.add(new Finish.Tare(said.what().text(), weight)));
        }
        return tares;
    }

    Portion.EndPieces endPieces(Clauses clauses) {
        return clauses.one(PortionClause.EndPieces.class, "where the end pieces go")
                .map(this::endPieces)
                .orElse(new Portion.EndPieces.NotStated());
    }

    private Portion.EndPieces endPieces(PortionClause.EndPieces said) {
        Home home = new Home.ToStream(said.stream().text());
        return said.weight().stream()
                .flatMap(figure -> figures.expected(figure, Dimension.WEIGHT).stream())
                .<Portion.EndPieces>map((Expected weight) -> new Portion.EndPieces.Weighed(weight, home))
                .findFirst()
                .orElse(new Portion.EndPieces.Sent(home));
    }
}
