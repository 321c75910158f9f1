package dev.gambrel.compiler.parse;

import dev.gambrel.compiler.internal.grammar.GambrelParser;
import dev.gambrel.compiler.internal.grammar.GambrelParser.*;
import dev.gambrel.compiler.internal.grammar.GambrelParser.AllowLineContext;
import dev.gambrel.compiler.parse.StatementConverter.Line;
import dev.gambrel.compiler.syntax.Clause;
import dev.gambrel.compiler.syntax.Name;
import dev.gambrel.text.Span;
import java.util.ArrayList;
import java.util.List;
import org.antlr.v4.runtime.ParserRuleContext;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.tree.ParseTree;
import org.antlr.v4.runtime.tree.TerminalNode;

/** The words of one line, whatever its kind. Of a damaged line it gives what could be read. */
final class LineConverter {
    private final Offsets offsets;
    private final NameConverter names;
    private final ClauseConverter clauses;
    private final Wholeness whole;
    private final LandmarkConverter landmarks;

    LineConverter(
            Offsets offsets, NameConverter names, FigureConverter figures, ClauseConverter clauses, Wholeness whole) {
        this.whole = whole;
        this.offsets = offsets;
        this.names = names;
        this.clauses = clauses;
        this.landmarks = new LandmarkConverter(offsets, names, figures, whole);
    }

    Line header(BlockHeaderContext header) {
        return plain(header, List.of());
    }

    Line line(SimpleStatementContext line) {
        if (line instanceof LanguageLineContext c) {
            return new Line(List.of(), c.NUMBER() == null ? List.of() : List.of(numbers(c.NUMBER(), c.NUMBER())));
        } else if (line instanceof UseLineContext c) {
            return new Line(List.of(), text(c.STRING()));
        } else if (line instanceof RevisesLineContext c) {
            return new Line(List.of(), text(c.STRING()));
        } else if (line instanceof NoteLineContext c) {
            return new Line(List.of(), text(c.STRING()));
        } else if (line instanceof SpecificationLineContext c) {
            return specification(c);
        } else if (line instanceof SeparateLineContext c) {
            return new Line(List.of(), landmarks.separation(c));
        } else if (line instanceof ReferenceLineContext c) {
            return plain(c, item(c));
        } else if (line instanceof RemoveLineContext c) {
            return removal(c);
        } else if (line instanceof TrimLineContext c) {
            return trim(c);
        } else if (line instanceof SquareLineContext c) {
            return square(c);
        } else if (line instanceof AllowLineContext c) {
            return plain(c, text(c.STRING()));
        } else if (line instanceof VertebraeLineContext c) {
            return plain(c, region(c.WORD()));
        } else if (line instanceof PortionLineContext c) {
            return plain(c, whole.of(c.expectation()) ? List.of(clauses.size(c)) : List.of());
        } else if (line instanceof LeaveLineContext c) {
            return plain(c, text(c.STRING()));
        } else if (line instanceof TermLineContext c) {
            return new Line(List.of(), clauses.of(c));
        } else if (line instanceof PackLineContext c) {
            return new Line(List.of(), clauses.of(c));
        } else if (line instanceof EstimateLineContext c) {
            return plain(c, clauses.estimates().workedOut(c));
        }
        return plain(line, List.of());
    }

    /** Names, figures, counts, bases and the tail, in the order in which they stand. */
    private Line plain(ParserRuleContext line, List<Clause> first) {
        List<Name> found = new ArrayList<>(1);
        List<Clause> said = new ArrayList<>(first);
        for (ParseTree child : line.children == null ? List.<ParseTree>of() : line.children) {
            if (!(child instanceof ParserRuleContext part) || !(part instanceof TailContext) && !whole.of(part)) {
                continue;
            }
            if (part instanceof NameContext name) {
                found.add(names.name(name));
            } else if (part instanceof GradeValueContext value) {
                found.add(clauses.gradeValue(value));
            } else if (part instanceof FigureContext figure) {
                said.add(clauses.figure(figure));
            } else if (part instanceof CountContext count) {
                List<TerminalNode> numbers = count.NUMBER();
                said.add(numbers(numbers.get(0), numbers.get(numbers.size() - 1)));
            } else if (part instanceof BasisContext basis) {
                said.add(new Clause.Basis(names.slice(offsets.of(basis)), offsets.of(basis)));
            } else if (part instanceof TailContext tail) {
                said.addAll(clauses.tail(tail));
            }
        }
        return new Line(found, said);
    }

    private Line specification(SpecificationLineContext c) {
        List<Clause> said = new ArrayList<>(text(c.STRING()));
        if (c.NUMBER() != null) {
            said.add(numbers(c.NUMBER(), c.NUMBER()));
        }
        if (whole.of(c.name())) {
            Name species = names.name(c.name());
            said.add(new Clause.ForSpecies(species, species.span()));
        }
        if (c.tail() != null) {
            said.addAll(clauses.tail(c.tail()));
        }
        return new Line(List.of(), said);
    }

    private Line trim(TrimLineContext c) {
        List<Clause> limits = new ArrayList<>();
        c.fatLimit().stream().filter(whole::of).forEach(limit -> limits.add(clauses.fatLimit(limit)));
        Line line = plain(c, limits);
        return new Line(List.of(word(c.FAT(), c.getStart())), line.clauses());
    }

    private Line square(SquareLineContext c) {
        Span span = c.OFF() == null
                ? offsets.of(c.getStart())
                : offsets.of(c.getStart(), c.OFF().getSymbol());
        return new Line(
                List.of(names.name("square off", span)), plain(c, List.of()).clauses());
    }

    private Name word(TerminalNode word, Token otherwise) {
        Token token = word == null ? otherwise : word.getSymbol();
        return names.name(token.getText(), offsets.of(token));
    }

    private List<Clause> item(ReferenceLineContext c) {
        ItemNumberContext item = c.itemNumber();
        if (!whole.of(item)) {
            return List.of();
        }
        String number =
                item.STRING() != null ? NameConverter.unquoted(item.STRING().getText()) : item.getText();
        String edition = c.NUMBER() == null ? "" : c.NUMBER().getText();
        return List.of(new Clause.Item(number, edition, offsets.of(item)));
    }

    /** "remove gland popliteal": the word gland says what kind of thing the name is of. */
    private Line removal(RemoveLineContext c) {
        Line line = plain(c, List.of());
        boolean marked = whole.of(c.name())
                && c.name().getChildCount() > 1
                && c.name().getStart().getType() == GambrelParser.GLAND;
        if (!marked) {
            return line;
        }
        Token second = ((TerminalNode) c.name().getChild(1)).getSymbol();
        Span span = offsets.of(second, c.name().getStop());
        List<Clause> said = new ArrayList<>(line.clauses());
        said.add(new Clause.GlandMark(offsets.of(c.name().getStart())));
        return new Line(List.of(names.name(names.slice(span), span)), said);
    }

    private List<Clause> region(TerminalNode word) {
        return word == null ? List.of() : List.of(new Clause.Region(word.getText(), offsets.of(word.getSymbol())));
    }

    private List<Clause> text(TerminalNode string) {
        return string == null
                ? List.of()
                : List.of(new Clause.Text(NameConverter.unquoted(string.getText()), offsets.of(string.getSymbol())));
    }

    private Clause numbers(TerminalNode first, TerminalNode last) {
        return new Clause.Numbers(first.getText(), last.getText(), offsets.of(first.getSymbol(), last.getSymbol()));
    }
}
