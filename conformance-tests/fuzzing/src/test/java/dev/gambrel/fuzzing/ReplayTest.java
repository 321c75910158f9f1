package dev.gambrel.fuzzing;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicContainer;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** What the fuzzer reached and what it found, held to the same again. */
class ReplayTest {
    @TestFactory
    Stream<DynamicContainer> what_was_found_holds_now() {
        return Stream.of(Target.values()).map(target -> replayed(target, target.found()));
    }

    @TestFactory
    Stream<DynamicContainer> every_seed_holds() {
        return Stream.of(Target.values()).map(target -> replayed(target, target.seeds()));
    }

    private static DynamicContainer replayed(Target target, List<Path> files) {
        return DynamicContainer.dynamicContainer(
                target.name(),
                files.stream()
                        .map(file -> DynamicTest.dynamicTest(
                                file.getFileName().toString(), () -> target.holds(Target.bytes(file)))));
    }

    @Test
    void every_way_in_has_seeds() {
        for (Target target : Target.values()) {
            assertFalse(target.seeds().isEmpty(), target::name);
        }
    }

    /** The seeds are few enough that every build replays them. */
    @Test
    void the_seeds_are_no_more_than_a_few_hundred_kilobytes() {
        long bytes = Stream.of(Target.values())
                .flatMap(target -> target.seeds().stream())
                .mapToLong(file -> Target.bytes(file).length)
                .sum();
        assertTrue(bytes <= 300 * 1024, () -> bytes + " bytes");
    }
}
