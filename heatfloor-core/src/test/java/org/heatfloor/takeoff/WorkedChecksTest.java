package org.heatfloor.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Worked checks of tile take-off: published examples and geometry worked by hand, at the digits shown. */
class WorkedChecksTest {

    @ParameterizedTest(name = "{0} {1} ({2})")
    @CsvFileSource(resources = "worked-checks.csv", delimiter = ';', numLinesToSkip = 1)
    void holds(String id, String quantity, String inputs, double expected, double tolerance, String source) {
        assertThat(source).as("%s has a source", id).isNotBlank();
        double found = WorkedChecks.value(quantity, inputs);
        assertThat(found).as("%s %s", id, quantity).isCloseTo(expected, within(tolerance + 1e-9));
    }

    @Test
    void everyCheckIsHere() throws java.io.IOException {
        Set<String> wanted = IntStream.rangeClosed(1, 42)
                .mapToObj(i -> String.format(java.util.Locale.ROOT, "W%02d", i))
                .collect(Collectors.toCollection(HashSet::new));
        try (var in = WorkedChecksTest.class.getResourceAsStream("worked-checks.csv")) {
            assertThat(in).isNotNull();
            List<String> lines = new String(in.readAllBytes(), java.nio.charset.StandardCharsets.UTF_8)
                    .lines()
                    .toList();
            lines.forEach(l -> wanted.remove(l.substring(0, Math.min(3, l.length()))));
        }
        assertThat(wanted).isEmpty();
    }
}
