package org.heatfloor.electrical;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.heatfloor.finding.Finding;
import org.heatfloor.finding.Source;
import org.heatfloor.quantity.Amounts;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Whatever the package says rests on a document with its edition and clause, or bears an honest mark. */
class SourcesTest {

    private static final List<Finding> FINDINGS = EverySource.findings();

    /** A year in the name of a standard or code, an edition in words, or the admission that none is given. */
    private static final Pattern EDITION =
            Pattern.compile("NEC (2011|2020|2023)|(IEC|BS|EN) [0-9-]+:\\d{4}|ANSI C84\\.1-\\d{4}|fifth edition"
                    + "|edition (and clause )?not given");

    /** A clause, table, annex or chapter after the document. */
    private static final Pattern CLAUSE = Pattern.compile(
            ", .*(\\d{3}|\\d\\.\\d|Table \\w|Annex \\w|ch\\. \\d|Appendix \\d|clause( number)? not given|CN\\d\\d|CuNi44)");

    private static boolean honest(Source source) {
        return switch (source.kind()) {
            case DOCUMENT, FROM_MEMORY ->
                EDITION.matcher(source.text()).find()
                        && (CLAUSE.matcher(source.text()).find()
                                || source.text().contains("clause not given"));
            case COMMON_PRACTICE -> source.toString().startsWith("common practice, no source: ");
            case DERIVED, BRIEF -> false;
        };
    }

    @Test
    void everyFindingQuotesDocumentEditionAndClause() {
        List<String> without = FINDINGS.stream()
                .filter(f -> !honest(f.source()))
                .map(f -> f.message() + " <- " + f.source())
                .distinct()
                .toList();
        assertThat(without).isEmpty();
        assertThat(FINDINGS).hasSizeGreaterThan(3000);
    }

    /** The sweep reaches every sentence the package can say. */
    @ParameterizedTest
    @CsvSource(delimiter = ';', textBlock = """
            is not a nominal voltage
            no method of installation was stated
            no ambient temperature was stated
            rated for 2 laid together
            more than the 20
            are shared over
            it would overheat
            it is the wrong cable for this supply
            count on that power
            shorter than a factory-made one may be
            above the limit for cable in concrete
            least standard rating
            no standard protective device
            % is the advice
            take a larger conductor or a shorter way
            additional protection by a residual current device
            carries the circuit
            is overloaded
            is rated too low for a means of disconnection
            switches 1 A of heating
            may open the
            is not rated for the supply voltage
            does not serve as the means of disconnection
            licensed electrician
            whether the cable has an earthed screen was not stated
            the cable is screened
            no grounding braid or sheath
            its listing decides
            cover it with a metal mesh
            too coarse
            the mesh that covers it
            the runs keep
            the runs lie closer
            the panel sets keep
            give more power per heated area
            is that of the cable's voltage
            is not that of the cable's voltage
            cannot be subdivided
            lies in a closet
            leaves the room
            crosses an expansion joint
            known here speaks of it
            demanded: ground-fault
            known here demands
            does not belong in zone 1
            may stand here
            keeps within what the residual current device bears
            may trip the residual current device
            the contents fit the box
            the contents need
            are lost in the cold lead
            the fill of the box is not judged
            not judged, because not given
            never joined in series
            different rated voltages
            core 150 Ω is accepted
            is accepted: do not cover
            screen above
            at least 0.93 Ω is expected
            sensor above
            use an insulation tester
            choose a greater one
            was not written down
            too low a voltage
            was not measured
            no floor sensor was stated
            no complete test
            lies within the label's tolerance
            does not belong to the label
            """)
    void everySentenceIsReached(String sought) {
        assertThat(FINDINGS.stream().anyMatch(f -> f.message().contains(sought)))
                .as(sought)
                .isTrue();
    }

    @Test
    void everyRuleAndTableNamesItsEdition() {
        List<Source> sources = new ArrayList<>();
        for (ElectricalCode code : ElectricalCode.all()) {
            code.rules().values().forEach(rule -> sources.add(rule.source()));
            for (ConductorSize size : code.conductorSizes()) {
                sources.add(code.dropSource(size));
                for (String method : code.installationMethods()) {
                    sources.addAll(
                            code.ampacity(size, method, Amounts.celsius(40), 3).sources());
                }
            }
        }
        Alloy.all().forEach(alloy -> sources.add(alloy.source()));
        for (String size : List.of("0.5 mm²", "10 mm²", "14 AWG", "4 AWG")) {
            sources.add(ColdLeadDrop.of(Cables.twin("x", 10, 100, 230), ConductorSize.of(size), Amounts.volts(230))
                    .source());
        }
        sources.add(ResistanceTolerance.USUAL.source());
        for (SupplyTolerance each : List.of(
                SupplyTolerance.IEC_60038,
                SupplyTolerance.EN_50160,
                SupplyTolerance.EN_50160_EXTREME,
                SupplyTolerance.ANSI_C84_1_RANGE_A,
                SupplyTolerance.ANSI_C84_1_RANGE_A_LOAD,
                SupplyTolerance.ANSI_C84_1_RANGE_B,
                SupplyTolerance.ANSI_C84_1_RANGE_B_LOAD)) {
            sources.add(each.source());
        }
        assertThat(sources.stream().filter(s -> !honest(s)).distinct()).isEmpty();
    }

    @Test
    void everyTableRowNamesItsSource() {
        for (String table : List.of(
                "ampacity.csv",
                "ambient-factor.csv",
                "grouping-factor.csv",
                "conductor-resistance.csv",
                "voltage-drop.csv",
                "box-volume.csv",
                "box-allowance.csv",
                "alloys.csv")) {
            for (Csv.Row row : Csv.read(table)) {
                assertThat(row.text("provenance")).isIn("V", "VE", "M");
                assertThat(EDITION.matcher(row.text("source")).find())
                        .as("%s", row)
                        .isTrue();
            }
        }
    }
}
