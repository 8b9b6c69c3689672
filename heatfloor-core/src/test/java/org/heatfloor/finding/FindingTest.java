package org.heatfloor.finding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.heatfloor.quantity.Amounts;
import org.junit.jupiter.api.Test;

class FindingTest {

    private static final Source PRACTICE = Source.commonPractice("seven studs");

    @Test
    void carries_figure_limit_and_source() {
        Finding finding = Finding.of(
                Severity.ERROR, "pan", "too near", Amounts.millimetres(200), Amounts.millimetres(238), PRACTICE);

        assertThat(finding.isError()).isTrue();
        assertThat(finding.value()).contains(Amounts.millimetres(200));
        assertThat(finding.limit()).contains(Amounts.millimetres(238));
        assertThat(finding.source().toString()).isEqualTo("common practice, no source: seven studs");
    }

    @Test
    void only_errors_are_errors() {
        assertThat(Finding.of(Severity.WARNING, "pan", "look", PRACTICE).isError())
                .isFalse();
        assertThat(Finding.withValue(Severity.NOTE, "pan", "look", Amounts.metres(1), PRACTICE)
                        .limit())
                .isEmpty();
    }

    @Test
    void blank_words_are_refused() {
        assertThatThrownBy(() -> Finding.of(Severity.NOTE, " ", "look", PRACTICE))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("neither may be blank");
        assertThatThrownBy(() -> Source.commonPractice("")).hasMessageContaining("source text: blank");
    }

    @Test
    void a_source_says_how_the_figure_is_known() {
        assertThat(Source.document("EN 1234:2020", "clause 5")).hasToString("EN 1234:2020, clause 5");
        assertThat(Source.fromMemory("EN 1234")).hasToString("from memory: EN 1234");
        assertThat(Source.derived("area")).hasToString("derived: area");
        assertThat(Source.brief("wallClearance")).hasToString("brief: wallClearance");
    }
}
