package dev.gambrel.compiler.parse;

import dev.gambrel.compiler.internal.grammar.GambrelParser.BlockContext;
import dev.gambrel.compiler.internal.grammar.GambrelParser.BlockHeaderContext;
import dev.gambrel.compiler.internal.grammar.GambrelParser.CutStatementContext;
import dev.gambrel.compiler.internal.grammar.GambrelParser.FileContext;
import dev.gambrel.compiler.internal.grammar.GambrelParser.StatementContext;
import dev.gambrel.compiler.internal.grammar.GambrelParser.StrayBraceContext;
import dev.gambrel.compiler.internal.grammar.GambrelParser.UnknownStatementContext;
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
import org.antlr.v4.runtime.tree.ParseTree;

/** Statements and the braces that hold them. */
final class StatementConverter {
    private final Offsets offsets;
    private final FileReport report;
    private final Set<ParserRuleContext> damaged;
    private final NameConverter names;
    private final FigureConverter figures;
    private final ClauseConverter clauses;
    private final LineConverter lines;

    StatementConverter(Offsets offsets, FileReport report, Set<ParserRuleContext> damaged) {
        this.offsets = offsets;
        this.report = report;
        this.damaged = damaged;
        this.names = new NameConverter(report.text(), offsets, report);
        this.figures = new FigureConverter(offsets, report, names);
        this.clauses = new ClauseConverter(offsets, names, figures);
        this.lines = new LineConverter(offsets, names, clauses);
    }

    List<Statement> file(FileContext file) {
        return statements(file.children);
    }

    private List<Statement> statements(List<ParseTree> children) {
        List<Statement> statements = new ArrayList<>();
        Token lastOfLine = null;
        for (ParseTree child : children == null ? List.<ParseTree>of() : children) {
            if (child instanceof StrayBraceContext brace) {
                report.add(report.finding(SyntaxCode.STRAY_BRACE, offsets.of(brace))
                        .help("Take it out, or look above for a cut whose brace { is missing."));
            } else if (child instanceof StatementContext statement) {
                boolean second = lastOfLine != null
                        && lastOfLine.getLine() == statement.getStart().getLine();
                convert(statement, second, statements);
                lastOfLine = statement.getStop();
            }
        }
        return statements;
    }

    private void convert(StatementContext context, boolean secondOnLine, List<Statement> statements) {
        if (context.block() != null) {
            loneBlock(context.block(), statements);
        } else if (context.unknownStatement() != null) {
            statements.add(unknown(context.unknownStatement(), secondOnLine));
        } else if (secondOnLine) {
            twoOnALine(context, statements);
        } else if (context.cutStatement() != null) {
            statements.add(cut(context, context.cutStatement()));
        } else if (context.simpleStatement() != null) {
            statements.add(declare(context, lines.line(context.simpleStatement()), List.of()));
        }
    }

    private Statement cut(StatementContext context, CutStatementContext statement) {
        BlockHeaderContext header = statement.blockHeader();
        Line line = lines.header(header);
        List<Statement> body = statement.block() == null ? List.of() : block(statement.block());
        return declare(context, line, body);
    }

    private List<Statement> block(BlockContext block) {
        return statements(block.children);
    }

    private Declaration declare(StatementContext context, Line line, List<Statement> body) {
        Token start = context.getStart();
        Keyword keyword = Keyword.of(start.getText()).orElseThrow();
        boolean unreadable = figures.takeDamage() || damaged.contains(context);
        return new Declaration(
                keyword, offsets.of(start), line.names(), line.clauses(), body, unreadable, offsets.of(context));
    }

    private void twoOnALine(StatementContext context, List<Statement> statements) {
        Token start = context.getStart();
        report.add(report.finding(SyntaxCode.TWO_ON_A_LINE, offsets.of(start))
                .with("found", start.getText())
                .help("If it belongs to what stands before it, put a comma between them.")
                .help("If not, begin a new line here."));
        if (!statements.isEmpty() && statements.get(statements.size() - 1) instanceof Declaration before) {
            statements.set(statements.size() - 1, damagedCopy(before, before.body()));
        }
    }

    /** Braces on a line of their own are taken as those of the line before, so that nothing follows from one slip. */
    private void loneBlock(BlockContext block, List<Statement> statements) {
        List<Statement> body = block(block);
        report.add(report.finding(SyntaxCode.LONE_BLOCK, offsets.of(block.getStart()))
                .help("Put the opening brace { at the end of the line that they belong to."));
        if (!statements.isEmpty() && statements.get(statements.size() - 1) instanceof Declaration before) {
            statements.set(statements.size() - 1, damagedCopy(before, body));
        }
    }

    private static Declaration damagedCopy(Declaration before, List<Statement> body) {
        return new Declaration(
                before.keyword(), before.keywordSpan(), before.names(), before.clauses(), body, true, before.span());
    }

    private Statement unknown(UnknownStatementContext context, boolean secondOnLine) {
        Token start = context.getStart();
        Span span = offsets.of(start);
        if (secondOnLine) {
            report.add(report.finding(SyntaxCode.DOES_NOT_FIT, span)
                    .with("found", start.getText())
                    .with("line", "finished")
                    .help("Put a comma before it if it belongs to the line, or take it out."));
        } else {
            report.add(suggestKeyword(
                    report.finding(SyntaxCode.UNKNOWN_LINE, span).with("found", start.getText()), start));
        }
        List<Statement> body = context.block() == null ? List.of() : block(context.block());
        return new Statement.Unknown(body, offsets.of(context));
    }

    private static Diagnostic suggestKeyword(Diagnostic finding, Token start) {
        Optional<TradeName> near = NearestName.of(start.getText(), Keyword.names());
        if (near.isPresent()) {
            return finding.help("Did you mean “" + near.get() + "”?");
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
