package fascicle.site;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The same notebook gives the same bytes on any machine: whatever its language, hour, encoding and number of cores. */
class MachinesTest {

    @TempDir
    Path folder;

    /** A decimal comma; a dotted and a dotless i; digits of its own; years counted otherwise. */
    static Stream<List<String>> machines() {
        return Stream.of(
                List.of("-Duser.language=de", "-Duser.country=DE", "-Dfile.encoding=ISO-8859-1"),
                List.of("-Duser.language=tr", "-Duser.country=TR", "-Duser.timezone=Pacific/Kiritimati"),
                List.of("-Duser.language=ar", "-Duser.country=EG", "-XX:ActiveProcessorCount=1"),
                List.of("-Duser.language=th", "-Duser.country=TH", "-Duser.timezone=America/Adak"));
    }

    @ParameterizedTest
    @MethodSource("machines")
    void another_machine_writes_the_same_bytes(List<String> flags) {
        PublishedBook elsewhere =
                PublishedBook.publishUnder(flags, Checkout.root().resolve("content"), folder.resolve("book"));
        assertEquals(PublishedBook.ofTheDemo().digests(), elsewhere.digests());
    }
}
