package dev.gambrel.conformance.laws;

import static dev.gambrel.conformance.laws.HandMade.*;
import static dev.gambrel.tree.inspection.TreeCode.*;

import dev.gambrel.quantity.Expected;
import dev.gambrel.quantity.Unit;
import dev.gambrel.tree.Basis;
import dev.gambrel.tree.BoneState;
import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.Description;
import dev.gambrel.tree.Home;
import dev.gambrel.tree.Part;
import dev.gambrel.tree.Share;
import dev.gambrel.tree.SourceLean;
import dev.gambrel.tree.anatomy.SkeletonPoint;
import dev.gambrel.tree.anatomy.SpineRegion;
import dev.gambrel.tree.inspection.TreeCode;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** For every rule of the tree a tree that breaks it, made without a word of the language. */
final class BrokenTrees {
    private BrokenTrees() {}

    static Map<TreeCode, CutTree> all() {
        Map<TreeCode, CutTree> trees = new EnumMap<>(TreeCode.class);
        trees.putAll(ofSize());
        trees.putAll(ofNames());
        trees.putAll(ofFigures());
        trees.putAll(ofMass());
        trees.putAll(ofBones());
        trees.putAll(ofAnatomy());
        trees.putAll(ofHomes());
        return trees;
    }

    private static Map<TreeCode, CutTree> ofSize() {
        Part deep = cut("c0", "50", REST);
        for (int i = 1; i <= 100; i++) {
            deep = cut("c" + i, "50", deep, REST);
        }
        Stream<Part> many =
                IntStream.rangeClosed(1, 50_000).mapToObj(i -> new Part.Loss(name("drip " + i), share("0")));
        return Map.of(
                TOO_DEEP, carcass(deep, REST),
                TOO_MANY_STRUCTURES, knowing(100),
                TOO_MANY_PARTS, carcass(Stream.concat(many, Stream.of(REST)).toArray(Part[]::new)));
    }

    private static Map<TreeCode, CutTree> ofNames() {
        return Map.of(
                DUPLICATE_PART, carcass(cut("joint", "10"), cut("Joint", "20"), REST),
                UNKNOWN_STREAM, carcass(cut("joint", "10"), new Part.Rest(to("tub"))),
                DUPLICATE_STREAM, declaring(twice(HOUSE.streams()), HOUSE.sources()),
                UNKNOWN_SOURCE,
                        carcass(
                                cut("joint", new Share.Stated(percent("10"), List.of(), List.of(name("hearsay")))),
                                REST),
                DUPLICATE_SOURCE, declaring(HOUSE.streams(), twice(HOUSE.sources())),
                UNKNOWN_BASE, carcass(cut("joint", alsoOf("haunch", "10")), REST),
                AMBIGUOUS_NAME, carcass(cut("knuckle", "10"), REST),
                SAME_PIECE_TWICE, carcass(cut("rack", "5"), cut("best end", "5"), REST),
                NEARLY_A_PIECE, carcass(cut("legs", "30"), REST));
    }

    private static Map<TreeCode, CutTree> ofFigures() {
        Expected backward = new Expected.CentralRange(of("12", Unit.PERCENT), of("8", Unit.PERCENT));
        return Map.of(
                REVERSED_RANGE, carcass(cut("joint", new Share.Stated(backward)), REST),
                NEGATIVE_SPREAD, carcass(cut("joint", spread("10", "-1")), REST),
                SPREAD_TOO_LARGE, carcass(cut("joint", spread("10", "101")), REST),
                WEIGHT_NOT_POSITIVE, banded("0", "24"),
                STEP_TWICE, stepped(Basis.WARM, Basis.WARM));
    }

    private static Map<TreeCode, CutTree> ofMass() {
        Map<TreeCode, CutTree> trees = new EnumMap<>(TreeCode.class);
        trees.put(SUM_NOT_100, carcass(cut("one joint", "40"), cut("other joint", "50")));
        trees.put(TWO_RESTS, carcass(cut("joint", "40"), REST, REST));
        trees.put(NEGATIVE_REST, carcass(cut("one joint", "60"), cut("other joint", "50"), REST));
        trees.put(
                IMPOSSIBLE_SPREAD, carcass(cut("one joint", spread("40", "3")), cut("other joint", spread("60", "1"))));
        trees.put(LONE_SPREAD, carcass(cut("one joint", spread("40", "3")), cut("other joint", "60")));
        trees.put(SHARE_CONTRADICTION, carcass(cut("joint", alsoOf("carcass", "20")), REST));
        trees.put(SHARE_MISSING, carcass(cut("joint", new Share.NotStated()), REST));
        trees.put(SHARE_OUT_OF_RANGE, carcass(cut("joint", "-10"), REST));
        trees.put(
                DIVIDED_AND_SENT,
                carcass(cut("joint", share("10"), Description.NONE, MINCE, List.of(), cut("half", "50"), REST), REST));
        trees.put(OUTSIDE_PUBLISHED, carcass(cut("leg", "80"), REST));
        return trees;
    }

    private static Map<TreeCode, CutTree> ofBones() {
        return Map.of(
                BONE_LEFT_IN, carcass(cut("leg", described(BoneState.BONELESS)), REST),
                BONE_NEVER_ENTERED, carcass(cut("leg", "30", bone("humerus", "5"), REST), REST),
                UNKNOWN_BONE, carcass(cut("leg", "30", bone("wishbone", "5"), REST), REST),
                BONE_IN_LEAN, carcass(cut("leg", "30", bone("femur", "5", "diced"), REST), REST),
                BONE_UNACCOUNTED,
                        carcass(
                                cut(
                                        "leg",
                                        "30",
                                        cut("one half", described(BoneState.BONELESS)),
                                        cut("other half", described(BoneState.BONELESS))),
                                REST));
    }

    private static Map<TreeCode, CutTree> ofAnatomy() {
        SkeletonPoint last = new SkeletonPoint.LastRib();
        return Map.of(
                NO_SUCH_RIB, carcass(parted(new SkeletonPoint.Rib(14), last), REST),
                NO_SUCH_VERTEBRA, carcass(parted(new SkeletonPoint.Vertebra(SpineRegion.LUMBAR, 9), last), REST),
                GLAND_ELSEWHERE, carcass(cut("leg", "30", gland("prescapular"), REST), REST),
                UNKNOWN_GLAND, carcass(cut("leg", "30", gland("pineapple"), REST), REST),
                PIECE_COUNT_DIFFERS, carcass(single("leg"), REST),
                PAIR_UNSAID, carcass(cut("leg", "30"), REST),
                UNKNOWN_CONTENTS, carcass(holding("wishbone"), REST));
    }

    private static List<dev.gambrel.tree.Stream> onlyFrom(String cut) {
        return HOUSE.streams().stream()
                .map(stream ->
                        new dev.gambrel.tree.Stream(stream.name(), stream.kind(), stream.lean(), List.of(name(cut))))
                .toList();
    }

    private static Map<TreeCode, CutTree> ofHomes() {
        Home nowhere = new Home.NotStated();
        Home analysed = new Home.ToStream(
                name("diced"), new SourceLean.Stated(percent("80"), dev.gambrel.tree.term.Judged.CHEMICAL));
        return Map.of(
                NOT_FROM_THERE, declaring(onlyFrom("leg"), HOUSE.sources()),
                CUT_NOT_MADE, declaring(onlyFrom("wing"), HOUSE.sources()),
                SOURCE_JUDGED_APART, carcass(cut("joint", "10"), new Part.Rest(analysed)),
                NO_HOME, carcass(cut("joint", "10"), new Part.Rest(nowhere)),
                REMAINDER_NO_HOME, carcass(portioned(nowhere, "180"), REST),
                TARGET_OUTSIDE_RANGE, carcass(portioned(MINCE, "250"), REST),
                PORTION_OF_DIVIDED, carcass(portioned(MINCE, "180", cut("half", "50"), REST), REST));
    }
}
