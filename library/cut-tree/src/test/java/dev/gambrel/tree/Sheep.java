package dev.gambrel.tree;

import static dev.gambrel.tree.Sheet.name;

import dev.gambrel.tree.anatomy.AnatomicalCount;
import dev.gambrel.tree.anatomy.OtherName;
import dev.gambrel.tree.anatomy.Piece;
import dev.gambrel.tree.anatomy.PieceCount;
import dev.gambrel.tree.anatomy.Species;
import dev.gambrel.tree.anatomy.SpineRegion;
import java.util.List;
import java.util.Map;

/** A sheep with as much anatomy as the tests need: 13 ribs, 6 or 7 lumbar vertebrae (from memory), some pieces. */
public final class Sheep {
    private Sheep() {}

    public static Species sheep() {
        Piece chump = piece("chump", of(bones("aitch bone"), List.of(), List.of()), also("sirloin", "US"));
        Piece shank = piece("shank", of(bones("tibia"), List.of(), List.of()));
        Piece topside = piece("topside", of(List.of(), bones("semimembranosus"), List.of()));
        Piece leg = piece(
                "leg", of(bones("femur", "patella"), List.of(), bones("popliteal")), List.of(), chump, shank, topside);
        Piece loin = piece("loin", of(bones("lumbar vertebrae"), List.of(), List.of()), also("sirloin", "UK"));
        Piece shoulder = piece("shoulder", of(bones("humerus", "ribs"), List.of(), bones("prescapular")));
        Piece breast = piece("breast", of(bones("ribs"), List.of(), List.of()));
        return species(leg, loin, shoulder, breast, neck());
    }

    private static Piece neck() {
        return new Piece(
                name("neck"),
                List.of(),
                PieceCount.ONE,
                of(List.of(new Piece.Structure(name("neck bones"), also("cervical vertebrae"))), List.of(), List.of()),
                List.of(),
                List.of(),
                List.of());
    }

    public static Species species(Piece... pieces) {
        return new Species(
                name("sheep"),
                List.of(),
                new AnatomicalCount(13, 13),
                Map.of(SpineRegion.LUMBAR, new AnatomicalCount(6, 7), SpineRegion.CERVICAL, new AnatomicalCount(7, 7)),
                List.of(pieces));
    }

    /** A piece of which nothing but published figures is known. */
    public static Piece published(String name, Piece.Published... figures) {
        return new Piece(
                name(name),
                List.of(),
                PieceCount.NOT_STATED,
                Piece.Anatomy.NONE,
                List.of(figures),
                List.of(),
                List.of());
    }

    public static Piece.Published figure(String share, String of, String source) {
        return new Piece.Published(Sheet.expected(share), name(of), List.of(name(source)));
    }

    private static Piece piece(String name, Piece.Anatomy anatomy) {
        return piece(name, anatomy, List.of());
    }

    private static Piece piece(String name, Piece.Anatomy anatomy, List<OtherName> others, Piece... parts) {
        return new Piece(name(name), others, PieceCount.TWO, anatomy, List.of(), List.of(), List.of(parts));
    }

    private static Piece.Anatomy of(
            List<Piece.Structure> bones, List<Piece.Structure> muscles, List<Piece.Structure> glands) {
        return new Piece.Anatomy(bones, muscles, glands);
    }

    private static List<Piece.Structure> bones(String... names) {
        return List.of(names).stream()
                .map(name -> new Piece.Structure(name(name), List.of()))
                .toList();
    }

    private static List<OtherName> also(String name, String... regions) {
        return List.of(new OtherName(name(name), List.of(regions)));
    }
}
