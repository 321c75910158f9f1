package dev.gambrel.compiler.parse;

import dev.gambrel.compiler.code.SyntaxCode;
import dev.gambrel.compiler.internal.grammar.GambrelParser.BlockContext;
import dev.gambrel.compiler.internal.grammar.GambrelParser.BlockLineContext;
import dev.gambrel.compiler.internal.grammar.GambrelParser.FileContext;
import dev.gambrel.compiler.internal.grammar.GambrelParser.LineContext;
import dev.gambrel.compiler.internal.grammar.GambrelParser.StatementContext;
import dev.gambrel.compiler.syntax.Clause;
import dev.gambrel.compiler.syntax.Keyword;
import dev.gambrel.compiler.syntax.Name;
import dev.gambrel.compiler.syntax.Statement;
import dev.gambrel.compiler.syntax.Statement.Declaration;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.text.NearestName;
import dev.gambrel.text.Span;
import dev.gambrel.text.TradeName;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.antlr.v4.runtime.ParserRuleContext;
import org.antlr.v4.runtime.Token;

/** Statements and the braces that hold them. */
final class StatementConverter {
    private final Offsets offsets;
    private final FileReport report;
    private final Set<ParserRuleContext> damaged;
    private final NameConverter names;
    private final FigureConverter figures;
    private final LineConverter lines;

    StatementConverter(Offsets offsets, FileReport report, Set<ParserRuleContext> damaged) {
        this.offsets = offsets;
        this.report = report;
        this.damaged = damaged;
        this.names = new NameConverter(offsets, report);
        this.figures = new FigureConverter(offsets, report, names);
        Wholeness whole = new Wholeness(damaged.isEmpty());
        ClauseConverter clauses = new ClauseConverter(offsets, names, figures, whole);
        this.lines = new LineConverter(offsets, names, figures, clauses, whole);
    }

    List<Statement> file(FileContext file) {
        List<Statement> statements = new ArrayList<>();
        for (LineContext line : file.line()) {
            if (line.strayBrace() != null) {
                report.add(report.finding(SyntaxCode.STRAY_BRACE, offsets.of(line.strayBrace()))
                        .help("Take it out, or look above for a cut whose brace { is missing."));
                statements.add(new Statement.Unknown(List.of(), offsets.of(line.strayBrace())));
            } else if (line.loneBlock() != null) {
                line.loneBlock().block().forEach(block -> loneBlock(block, statements));
            } else if (line.statement() != null) {
                convert(line.statement(), statements);
            }
        }
        return statements;
    }

    private List<Statement> block(BlockContext block) {
        List<Statement> statements = new ArrayList<>();
        for (BlockLineContext line : block.blockLine()) {
            if (line.loneBlock() != null) {
                line.loneBlock().block().forEach(inner -> loneBlock(inner, statements));
            } else if (line.statement() != null) {
                convert(line.statement(), statements);
            }
        }
        return statements;
    }

    private void convert(StatementContext context, List<Statement> statements) {
        List<BlockContext> blocks = context.block();
        if (context.unknownStatement() != null) {
            statements.add(unknown(context));
            return;
        } else if (context.blockHeader() != null) {
            Line line = lines.header(context.blockHeader());
            statements.add(declare(context, line, blocks.isEmpty() ? List.of() : block(blocks.get(0))));
            blocks = blocks.subList(Math.min(1, blocks.size()), blocks.size());
        } else if (context.simpleStatement() != null) {
            statements.add(declare(context, lines.line(context.simpleStatement()), List.of()));
        }
        blocks.forEach(block -> loneBlock(block, statements));
    }

    private Declaration declare(StatementContext context, Line line, List<Statement> body) {
        Token start = context.getStart();
        Keyword keyword = Keyword.of(start.getText()).orElseThrow();
        boolean unreadable = figures.takeDamage() || damaged.contains(context);
        return new Declaration(
                keyword, offsets.of(start), line.names(), line.clauses(), body, unreadable, offsets.of(context));
    }

    /** Braces that belong to no line are taken as those of the line before, so that nothing follows from one slip. */
    private void loneBlock(BlockContext block, List<Statement> statements) {
        List<Statement> body = block(block);
        Diagnostic finding = report.finding(SyntaxCode.LONE_BLOCK, offsets.of(block.getStart()));
        if (!statements.isEmpty() && statements.get(statements.size() - 1) instanceof Declaration before) {
            if (before.keyword().hasBraces() && before.body().isEmpty()) {
                statements.set(statements.size() - 1, damagedCopy(before, body, offsets.of(block)));
                if (before.damaged()) {
                    return;
                }
                finding = finding.help("Put the opening brace { at the end of the line that they belong to.");
            } else {
                finding = finding.help(
                        "Only cut, species and piece lines have braces, and one pair each; take these out.");
            }
        }
        report.add(finding);
    }

    private static Declaration damagedCopy(Declaration before, List<Statement> body, Span braces) {
        Span all = before.span().cover(braces);
        return new Declaration(
                before.keyword(), before.keywordSpan(), before.names(), before.clauses(), body, true, all);
    }

    private Statement unknown(StatementContext context) {
        Token start = context.getStart();
        report.add(suggestKeyword(
                report.finding(SyntaxCode.UNKNOWN_LINE, offsets.of(start)).with("found", start.getText()), start));
        List<Statement> body = new ArrayList<>();
        context.block().forEach(block -> body.addAll(block(block)));
        return new Statement.Unknown(body, offsets.of(context));
    }

    private Diagnostic suggestKeyword(Diagnostic finding, Token start) {
        Optional<TradeName> near = NearestName.of(start.getText(), Keyword.names());
        if (near.isPresent()) {
            return report.didYouMean(finding, offsets.of(start), near.get());
        }
        return finding.help("Every line begins with a word of the language, such as cut, trim, bone, loss or rest.")
                .help("If it goes on from the line before, end that line with a comma.");
    }

    /**
     * What one line says.
     *
     * @param names the names it declares or lists
     * @param clauses the rest
     */
    record Line(List<Name> names, List<Clause> clauses) {}
}
