package dev.gambrel.tree.allowance;

import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.diagnostic.Code;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.FirstFindings;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.tree.Allowance;
import dev.gambrel.tree.Cut;
import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.Part;
import dev.gambrel.tree.Way;
import dev.gambrel.tree.inspection.Findings;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;

/** What one tree allows, set against what its rules find. Each finding costs O(depth). Not thread-safe. */
public final class Allowances {
    private static final int MOST_LETTERS = 60;

    private record Target(TreePath path, Code code) {}

    private final List<Allowance> stated;
    private final Set<TreePath> cuts = new HashSet<>();
    private final Map<Target, Integer> allowing = new HashMap<>();
    private final Set<Integer> used = new HashSet<>();
    private final List<AllowedWarning> allowed = new ArrayList<>();

    /** Costs nothing for a tree that allows nothing. */
    public Allowances(CutTree tree) {
        this.stated = tree.specification().allowances();
        if (!stated.isEmpty()) {
            addCuts(tree.parts(), TreePath.ROOT);
        }
    }

    private void addCuts(List<Part> parts, TreePath above) {
        for (Part part : parts) {
            if (part instanceof Cut cut) {
                addCut(cut, above);
            } else if (part instanceof Way way) {
                addCut(way.work(), above);
            }
        }
    }

    private void addCut(Cut cut, TreePath above) {
        TreePath path = above.then(cut.name());
        cuts.add(path);
        addCuts(cut.parts(), path);
    }

    /** Reports what cannot be allowed, or not so; to be asked before the rules are. */
    public void check(Consumer<Diagnostic> found) {
        for (int i = 0; i < stated.size(); i++) {
            Allowance allowance = stated.get(i);
            Optional<Code> code = Allowable.named(allowance.finding());
            if (code.isEmpty()) {
                unknown(i, found);
            } else if (!Allowable.is(code.get())) {
                found.accept(notAllowable(i, code.get()));
            } else {
                check(i, code.get(), found);
            }
        }
    }

    private void check(int index, Code code, Consumer<Diagnostic> found) {
        Allowance allowance = stated.get(index);
        Integer first = allowing.putIfAbsent(new Target(allowance.path(), code), index);
        if (first != null) {
            found.accept(finding(AllowanceCode.ALLOWED_TWICE, index)
                    .with("part", allowance.path())
                    .related(at(first), "allowed first")
                    .help("Keep one of the two."));
        } else if (allowance.reason().isBlank()) {
            found.accept(finding(AllowanceCode.NO_REASON, index)
                    .help("Write the reason after it: allow " + code.slug() + " \"why, and who agreed\""));
        }
    }

    /** What was probably meant counts as allowed, so that one slip costs one message. */
    private void unknown(int index, Consumer<Diagnostic> found) {
        Allowance allowance = stated.get(index);
        Diagnostic finding = finding(AllowanceCode.UNKNOWN_WARNING, index);
        Optional<Code> meant = Allowable.meant(allowance.finding());
        meant.ifPresent(code -> allowing.putIfAbsent(new Target(allowance.path(), code), index));
        found.accept(meant.map(code -> finding.help("Did you mean: allow " + code.slug() + " \"the reason\""))
                .orElseGet(() -> finding.note("These can be allowed: " + Findings.list(Allowable.names()) + ".")
                        .help("An error is put right; what a carcass weight brings up is looked at each time.")));
    }

    private Diagnostic notAllowable(int index, Code code) {
        boolean error = !(code instanceof AllowanceCode);
        return finding(AllowanceCode.NOT_ALLOWABLE, index)
                .with("what", error ? "an error" : "about what is allowed")
                .help("Take the line out; gambrel explain " + code.slug() + " tells what to do about it.");
    }

    /** Hands on what is found, unless it is allowed. */
    public Consumer<Diagnostic> before(Consumer<Diagnostic> found) {
        return stated.isEmpty() ? found : finding -> sort(finding, found);
    }

    private void sort(Diagnostic finding, Consumer<Diagnostic> found) {
        if (Allowable.is(finding.code()) && finding.place() instanceof Place.InTree in) {
            Optional<Integer> index = allowing(in.path(), finding.code());
            if (index.isPresent()) {
                used.add(index.get());
                keep(new AllowedWarning(finding, stated.get(index.get())));
                return;
            }
        }
        found.accept(finding);
    }

    private Optional<Integer> allowing(TreePath path, Code code) {
        Optional<Integer> own = Optional.ofNullable(allowing.get(new Target(path, code)));
        return own.isPresent() || cuts.contains(path)
                ? own
                : Optional.ofNullable(allowing.get(new Target(path.parent(), code)));
    }

    private void keep(AllowedWarning warning) {
        if (allowed.size() < FirstFindings.MOST) {
            allowed.add(warning);
        }
    }

    /** Reports what is allowed in vain; to be asked after the rules, and only where nothing hinders them. */
    public void unused(List<Diagnostic> listed, Consumer<Diagnostic> found) {
        if (used.size() == stated.size()) {
            return;
        }
        Map<Integer, TreePath> below = tooFarDown(listed);
        for (int i = 0; i < stated.size(); i++) {
            if (!used.contains(i)) {
                found.accept(unused(i, Optional.ofNullable(below.get(i))));
            }
        }
    }

    /** For each line that allows a warning which is listed further down, where that is. */
    private Map<Integer, TreePath> tooFarDown(List<Diagnostic> listed) {
        Map<Integer, TreePath> below = new HashMap<>();
        for (Diagnostic finding : listed) {
            TreePath path = ((Place.InTree) finding.place()).path();
            for (TreePath at = path; !at.equals(TreePath.ROOT); at = at.parent()) {
                Optional.ofNullable(allowing.get(new Target(at.parent(), finding.code())))
                        .ifPresent(index -> below.putIfAbsent(index, path));
            }
        }
        return below;
    }

    private Diagnostic unused(int index, Optional<TreePath> below) {
        Diagnostic finding = finding(AllowanceCode.UNUSED_ALLOWANCE, index)
                .with("part", stated.get(index).path());
        return below.map(path -> finding.note("It holds for a cut and its own lines, not for the cuts in it.")
                        .help("Write it in the braces of the cut that it is about: " + path + "."))
                .orElse(finding.help("Take the line out."));
    }

    /** The warnings that were allowed, the first 1,000. */
    public List<AllowedWarning> allowed() {
        return List.copyOf(allowed);
    }

    private Diagnostic finding(AllowanceCode code, int index) {
        String written = stated.get(index).finding();
        String shown = Allowable.named(written)
                .map(Code::slug)
                .orElse(written.length() > MOST_LETTERS ? written.substring(0, MOST_LETTERS) + "…" : written);
        return Diagnostic.of(code, at(index)).with("finding", shown);
    }

    private Place.InTree at(int index) {
        return new Place.InTree(stated.get(index).path(), Aspect.ALLOWANCE, index);
    }
}
