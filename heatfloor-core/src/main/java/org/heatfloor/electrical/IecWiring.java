package org.heatfloor.electrical;

import java.util.List;
import java.util.OptionalDouble;
import org.heatfloor.finding.Source;

/**
 * Copper conductors with 70 °C PVC insulation by IEC 60364-5-52:2009 (Table B.52.2, two loaded conductors) or by BS
 * 7671:2018 (Table 4D5, flat cable with protective conductor). The device is rated at or below the corrected
 * current-carrying capacity. The two tables differ in their method C columns and are never mixed.
 */
final class IecWiring extends Wiring {

    private static final String PVC = "70 °C PVC";
    private static final List<Csv.Row> MILLIVOLTS = Csv.read("voltage-drop.csv");
    /** Copper in service, 1.25 times the value at 20 °C; IEC 60364-5-52:2009, Annex G. */
    private static final double OHM_SQUARE_MILLIMETRE_PER_METRE = 0.0225;

    private final boolean british;

    IecWiring(boolean british) {
        this.british = british;
    }

    @Override
    String table() {
        return british ? "BS" : "IEC";
    }

    @Override
    String baseMethod() {
        return "C";
    }

    @Override
    List<String> methods() {
        return columns();
    }

    @Override
    Ampacity ampacity(ElectricalCode code, ConductorSize size, String method, double celsius, int groupedCircuits) {
        Figure tabulated = tabulated(code, size, method);
        Figure ambient = ambientFactor(code, PVC, celsius);
        Figure grouping = groupingFactor(code, groupedCircuits);
        double corrected = tabulated.value() * ambient.value() * grouping.value();
        return ampacity(
                tabulated,
                ambient,
                grouping,
                OptionalDouble.empty(),
                code.roundedDown(corrected),
                List.of(code.source(RuleTopic.DEVICE_AGAINST_CONDUCTOR)));
    }

    /**
     * IEC 60364-5-52:2009 Annex G, {@code u = 2·ρ₁·L/S·I} (single-phase, power factor 1, so that reactance drops out); BS
     * 7671:2018 Appendix 4, {@code V = (mV/A/m)·I·L/1000}.
     */
    @Override
    double dropVolts(ConductorSize size, double oneWayMetres, double amperes) {
        if (!british) {
            return Ohm.twoWireDrop(OHM_SQUARE_MILLIMETRE_PER_METRE / size.squareMillimetres(), oneWayMetres, amperes);
        }
        return row(size).number("millivoltPerAmpereMetre") * amperes * oneWayMetres / 1000;
    }

    @Override
    Source dropSource(ElectricalCode code, ConductorSize size) {
        if (!british) {
            return Source.document("IEC 60364-5-52:2009", "Annex G, ρ₁ = 0.0225 Ω·mm²/m");
        }
        String mark = row(size).text("provenance");
        return Provenance.source(mark, code.name(), "Table 4D5, mV/A/m", "voltage drop");
    }

    private static Csv.Row row(ConductorSize size) {
        for (Csv.Row row : MILLIVOLTS) {
            if (row.text("size").equals(size.toString())) {
                return row;
            }
        }
        throw new IllegalArgumentException("conductor: " + size + " was given; a size of Table 4D5 is expected");
    }
}
