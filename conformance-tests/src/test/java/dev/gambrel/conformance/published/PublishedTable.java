package dev.gambrel.conformance.published;

import dev.gambrel.compiler.Compilation;
import dev.gambrel.compiler.SpecCompiler;
import dev.gambrel.compiler.source.Sources;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.text.SourceText;
import dev.gambrel.tree.Basis;
import dev.gambrel.tree.CutTree;
import dev.gambrel.yields.CarcassWeight;
import dev.gambrel.yields.Yields;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/**
 * A published table written in the language.
 *
 * @param tree what the compiler makes of it
 */
record PublishedTable(CutTree tree) {
    static PublishedTable of(String file) {
        return new PublishedTable(check(file, text(file)).orElseThrow().tree());
    }

    static String text(String file) {
        try (InputStream in = PublishedTable.class.getResourceAsStream("/published/" + file)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    static Result<Compilation> check(String file, String text) {
        return new SpecCompiler().compile(new SourceText(file, text), Sources.none());
    }

    /** A value that a finding tells, by its name. */
    static String argument(String name, Diagnostic finding) {
        return finding.arguments().stream()
                .filter(argument -> argument.name().equals(name))
                .findFirst()
                .orElseThrow()
                .shown();
    }

    WeighedCarcass weighed(String amount, Unit unit, Basis basis) {
        CarcassWeight weight = new CarcassWeight(Quantity.of(amount, unit), basis);
        return new WeighedCarcass(Yields.of(tree).forCarcass(weight).orElseThrow(), unit);
    }
}
