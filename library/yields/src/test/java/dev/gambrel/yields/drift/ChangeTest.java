package dev.gambrel.yields.drift;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Where figures moved most. */
class ChangeTest {
    @Test
    void figuresThatMovedOnceAreTakenApartWhereTheyMoved() {
        assertEquals(new Change(3, 4, 2), Change.of(List.of(4.1, 3.9, 4.0, 2.0, 2.1, 1.9)));
        assertEquals(new Change(1, 1, 2), Change.of(List.of(1.0, 2.0)));
    }
}
