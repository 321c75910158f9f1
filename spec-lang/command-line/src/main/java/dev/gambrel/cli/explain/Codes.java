package dev.gambrel.cli.explain;

import dev.gambrel.batches.BatchCode;
import dev.gambrel.batches.sheets.PriceCode;
import dev.gambrel.batches.sheets.SharesCode;
import dev.gambrel.batches.sheets.SheetCode;
import dev.gambrel.blends.BlendCode;
import dev.gambrel.compiler.code.ConditionCode;
import dev.gambrel.compiler.code.MeaningCode;
import dev.gambrel.compiler.code.RestateCode;
import dev.gambrel.compiler.code.RevisionCode;
import dev.gambrel.compiler.code.SyntaxCode;
import dev.gambrel.compiler.format.FormatCode;
import dev.gambrel.compiler.source.FileCode;
import dev.gambrel.diagnostic.Code;
import dev.gambrel.json.located.JsonCode;
import dev.gambrel.references.code.ReferenceCode;
import dev.gambrel.reports.png.ImageCode;
import dev.gambrel.tree.allowance.AllowanceCode;
import dev.gambrel.tree.inspection.BenchCode;
import dev.gambrel.tree.inspection.ChoiceCode;
import dev.gambrel.tree.inspection.EquationCode;
import dev.gambrel.tree.inspection.TermCode;
import dev.gambrel.tree.inspection.TreeCode;
import dev.gambrel.yields.YieldCode;
import dev.gambrel.yields.conformance.ConformanceCode;
import dev.gambrel.yields.conformance.number.NumberCode;
import dev.gambrel.yields.estimate.MeasurementCode;
import dev.gambrel.yields.packs.PackCode;
import dev.gambrel.yields.working.WorkingCode;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** Every kind of finding that the program can print. */
public final class Codes {
    private Codes() {}

    /**
     * All kinds of finding.
     *
     * @return by identifier
     */
    public static List<Code> all() {
        return Stream.<Code[]>of(
                        FileCode.values(),
                        SyntaxCode.values(),
                        MeaningCode.values(),
                        ConditionCode.values(),
                        RevisionCode.values(),
                        RestateCode.values(),
                        FormatCode.values(),
                        TreeCode.values(),
                        BenchCode.values(),
                        ChoiceCode.values(),
                        EquationCode.values(),
                        TermCode.values(),
                        AllowanceCode.values(),
                        JsonCode.values(),
                        YieldCode.values(),
                        BatchCode.values(),
                        WorkingCode.values(),
                        MeasurementCode.values(),
                        BlendCode.values(),
                        PackCode.values(),
                        ReferenceCode.values(),
                        NumberCode.values(),
                        ConformanceCode.values(),
                        PriceCode.values(),
                        SheetCode.values(),
                        ImageCode.values(),
                        SharesCode.values())
                .flatMap(Stream::of)
                .sorted(Comparator.comparing(Code::id))
                .toList();
    }
}
