package dev.gambrel.yields.conformance.number;

import dev.gambrel.references.claims.Claim;
import dev.gambrel.references.item.Animal;
import dev.gambrel.references.item.BoneState;
import dev.gambrel.references.unece.Refrigeration;
import dev.gambrel.tree.anatomy.OtherName;
import dev.gambrel.tree.anatomy.Species;
import dev.gambrel.tree.portion.Limit;
import dev.gambrel.yields.conformance.clause.Clause;
import dev.gambrel.yields.conformance.clause.Quality;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** What clauses and an animal claim, in the words of published schemes; what has no such words claims nothing. */
final class Claims {
    private static final Map<String, Animal> ANIMALS = Map.of(
            "cattle", Animal.BEEF,
            "beef", Animal.BEEF,
            "veal", Animal.VEAL,
            "pig", Animal.PORK,
            "pork", Animal.PORK,
            "sheep", Animal.SHEEP,
            "goat", Animal.GOAT,
            "horse", Animal.HORSE);
    private static final Map<String, BoneState> BONES =
            Map.of("bone in", BoneState.BONE_IN, "boneless", BoneState.BONELESS);
    private static final Map<String, Refrigeration> COLD =
            Map.of("chilled", Refrigeration.CHILLED, "frozen", Refrigeration.FROZEN);

    private Claims() {}

    static Optional<Animal> animal(Species species) {
        return Stream.concat(
                        Stream.of(species.name()), species.otherNames().stream().map(OtherName::name))
                .flatMap(name -> Optional.ofNullable(ANIMALS.get(name.key())).stream())
                .findFirst();
    }

    static List<Claim> of(Clause clause) {
        if (clause instanceof Clause.State state && state.quality() == Quality.BONE_STATE) {
            return Stream.ofNullable(BONES.get(state.state()))
                    .<Claim>map(Claim.Bone::new)
                    .toList();
        } else if (clause instanceof Clause.State state && state.quality() == Quality.REFRIGERATION) {
            return Stream.ofNullable(COLD.get(state.state()))
                    .<Claim>map(Claim.Kept::new)
                    .toList();
        }
        return clause instanceof Clause.Limited limited ? limited(limited) : List.of();
    }

    private static List<Claim> limited(Clause.Limited limited) {
        Limit limit = limited.limit();
        return switch (limited.quality()) {
            case FAT_AVERAGE ->
                limit.most().<Claim>map(Claim.AverageFat::new).stream().toList();
            case FAT_AT_ANY_POINT ->
                limit.most().<Claim>map(Claim.FatAtAnyPoint::new).stream().toList();
            case WEIGHT -> weight(limit).stream().toList();
            default -> List.of();
        };
    }

    private static Optional<Claim> weight(Limit limit) {
        return limit.least()
                .flatMap(low -> limit.most()
                        .filter(high -> low.compareTo(high) <= 0)
                        .map(high -> new Claim.PieceWeight(low, high)));
    }
}
