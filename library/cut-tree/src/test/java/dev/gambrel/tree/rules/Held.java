package dev.gambrel.tree.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.gambrel.diagnostic.Code;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.tree.Sheet;
import java.util.List;

/** Sheets held against all rules. */
final class Held {
    private Held() {}

    static List<Diagnostic> against(Sheet sheet) {
        return TreeRules.check(sheet.tree());
    }

    static void keepsTheRules(Sheet sheet) {
        assertEquals(List.of(), against(sheet).stream().map(Diagnostic::message).toList());
    }

    static void breaks(Sheet sheet, Code... codes) {
        assertEquals(
                List.of(codes), against(sheet).stream().map(Diagnostic::code).toList());
    }

    /** The only finding, which is of one kind. */
    static Diagnostic only(Sheet sheet, Code code) {
        breaks(sheet, code);
        return against(sheet).get(0);
    }

    /** "leg / chump, share" and which one of several, if not the first. */
    static String where(Place place) {
        Place.InTree in = (Place.InTree) place;
        String which = in.index() == 0 ? "" : " " + in.index();
        return in.path() + ", " + in.aspect().name().toLowerCase(java.util.Locale.ROOT) + which;
    }

    static TreePath path(String... names) {
        TreePath path = TreePath.ROOT;
        for (String name : names) {
            path = path.then(Sheet.name(name));
        }
        return path;
    }
}
