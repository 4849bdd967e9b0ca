package fascicle.workings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import fascicle.notebook.Outcome;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** How far a count of dye days can be trusted. */
class ShareTest {

    /** The figures and their sources stand in the file. */
    @ParameterizedTest
    @CsvFileSource(resources = "wilson.csv", useHeadersInDisplayName = true)
    void theIntervalIsWilsons(String kind, int worked, int of, double level, double estimate, double low, double high) {
        Share share = new Share(worked, of);
        assertEquals(low, share.low(), 1e-9);
        assertEquals(high, share.high(), 1e-9);
    }

    @Test
    void noneAndAllEndExactly() {
        for (int days = 1; days < 400; days++) {
            assertEquals(0.0, new Share(0, days).low());
            assertEquals(1.0, new Share(days, days).high());
        }
    }

    @Test
    void aDayWithoutAVerdictIsNotCounted() {
        Workroom room = Workroom.usual();
        room.entry("2026-05-09-a").worked();
        room.entry("2026-05-09-b").verdict(Outcome.Verdict.FAILED);
        room.entry("2026-05-16-c").verdict(Outcome.Verdict.FAILED);
        room.entry("2026-05-23-d");
        assertEquals(Optional.of(new Share(1, 2)),
                room.workings().group(Group.Kind.YEAR, "2026").orElseThrow().days().share());
        assertEquals(Optional.empty(),
                room.workings().group(Group.Kind.DAY, "2026-05-23").orElseThrow().days().share());
    }

    @Test
    void moreDaysThanThereWereAreAMistake() {
        assertThrows(IllegalArgumentException.class, () -> new Share(0, 0));
        assertThrows(IllegalArgumentException.class, () -> new Share(3, 2));
        assertThrows(IllegalArgumentException.class, () -> new Share(-1, 2));
    }
}
