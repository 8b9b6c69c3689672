package org.heatfloor.electrical;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.heatfloor.finding.Finding;
import org.heatfloor.finding.Severity;
import org.heatfloor.quantity.Amounts;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Every limit is judged by the editions that state it and by no other; the rows carry source and provenance. */
class EditionRulesTest {

    private static InstallationDetails.Builder details() {
        return InstallationDetails.builder();
    }

    private static CircuitDesign design(String code, HeatingCable cable, InstallationDetails.Builder details) {
        double volts = Given.in(cable.voltage(), org.heatfloor.quantity.Units.VOLT);
        String size = code.startsWith("NEC") ? "4 AWG" : "10 mm²";
        return CircuitDesign.of(Cables.supply(code, volts, 5, size), List.of(cable), details.build());
    }

    private static CircuitDesign design(String code, String rule, String figure) {
        HeatingCable cable = Cables.twin("x", 50, 480, code.startsWith("NEC") ? 240 : 230);
        return switch (rule) {
            case "spacing in concrete" ->
                design(
                        code,
                        cable,
                        details()
                                .embedding(Embedding.CONCRETE)
                                .runSpacing(Amounts.millimetres(Double.parseDouble(figure))));
            case "panels in concrete", "panels under covering" ->
                design(
                        code,
                        cable,
                        details()
                                .panelSet()
                                .embedding(rule.endsWith("concrete") ? Embedding.CONCRETE : Embedding.FLOOR_COVERING)
                                .heatedArea(Amounts.squareMetres(480 / Double.parseDouble(figure))));
            case "lead colour" -> design(code, cable, details().leadColour(LeadColour.valueOf(figure)));
            case "watts per metre" ->
                design(code, Cables.twin("x", 10, 10 * Double.parseDouble(figure), 240), details());
            case "watts per metre under covering" ->
                design(
                        code,
                        Cables.twin("x", 10, 10 * Double.parseDouble(figure), 240),
                        details().embedding(Embedding.FLOOR_COVERING));
            case "amperes of one cable" ->
                design(code, Cables.twin("x", 1000, 240 * Double.parseDouble(figure), 240), details());
            case "place" -> design(code, cable, details().places(CablePlace.valueOf(figure)));
            default -> throw new IllegalStateException(rule);
        };
    }

    @ParameterizedTest(name = "{0}: {1} {2} is {3}")
    @CsvFileSource(resources = "edition-judgements.csv", delimiter = ';', numLinesToSkip = 1)
    void judged(String code, String rule, String figure, String verdict, String clause, String source, String mark) {
        assertThat(source).isNotBlank();
        assertThat(mark).isIn("published", "from memory", "none");
        Optional<Finding> finding = design(code, rule, figure).findings().stream()
                .filter(f -> f.source().text().contains(clause))
                .filter(f -> !f.subject().equals("duty") && !f.subject().equals("safety"))
                .filter(f -> !f.subject().equals("not checked"))
                .findFirst();
        if (verdict.equals("-")) {
            assertThat(finding).isEmpty();
            return;
        }
        assertThat(finding).isPresent();
        assertThat(finding.orElseThrow().severity()).isEqualTo(Severity.valueOf(verdict));
        assertThat(finding.orElseThrow().source().text())
                .isEqualTo(clause.startsWith("follow") ? clause : code + ", " + clause);
    }
}
