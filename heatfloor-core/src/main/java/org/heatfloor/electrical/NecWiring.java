package org.heatfloor.electrical;

import java.util.List;
import java.util.OptionalDouble;
import org.heatfloor.finding.Source;
import org.heatfloor.quantity.Units;

/**
 * Copper conductors by the NEC: Table 310.16 with ambient correction and adjustment for number of conductors, terminal
 * temperature (110.14(C)), nonmetallic-sheathed cable (334.80), the next standard rating up (240.4(B)) and small
 * conductors (240.4(D)); voltage drop from Chapter 9 Table 8.
 */
final class NecWiring extends Wiring {

    /** Insulation and terminals for 60 °C. */
    private static final String SIXTY = "60 °C";
    /** Nonmetallic-sheathed cable: corrected from the 90 °C column, never above the 60 °C column. */
    private static final String NM_B = "NM-B";

    private static final List<Csv.Row> RESISTANCE = Csv.read("conductor-resistance.csv");
    private static final double METRES_PER_KILOFOOT = 304.8;

    @Override
    String table() {
        return "NEC";
    }

    @Override
    String baseMethod() {
        return SIXTY;
    }

    @Override
    List<String> methods() {
        return List.of(SIXTY, "75 °C", "90 °C", NM_B);
    }

    @Override
    Ampacity ampacity(ElectricalCode code, ConductorSize size, String method, double celsius, int groupedCircuits) {
        String column = method.equals(NM_B) ? "90 °C" : method;
        String terminals = method.equals("75 °C") ? "75 °C" : SIXTY;
        Figure tabulated = tabulated(code, size, column);
        Figure ambient = ambientFactor(code, column, celsius);
        Figure grouping = groupingFactor(code, 2 * groupedCircuits);
        double terminal = tabulated(code, size, terminals).value();
        double usable = Math.min(tabulated.value() * ambient.value() * grouping.value(), terminal);
        double greatest = Math.min(code.roundedUp(usable).orElse(usable), smallConductorLimit(size));
        greatest = Math.min(greatest, code.limit(RuleTopic.ELEMENT_PROTECTION, Units.AMPERE));
        Source terminalRule = method.equals(NM_B) ? read2023(code, "334.80") : code.source(RuleTopic.TERMINALS);
        return ampacity(
                tabulated,
                ambient,
                grouping,
                OptionalDouble.of(terminal),
                code.roundedDown(greatest),
                List.of(
                        terminalRule,
                        code.source(RuleTopic.DEVICE_AGAINST_CONDUCTOR),
                        code.source(RuleTopic.SMALL_CONDUCTOR)));
    }

    /** 240.4(D), copper. */
    private static double smallConductorLimit(ConductorSize size) {
        return switch (size.toString()) {
            case "14 AWG" -> 15;
            case "12 AWG" -> 20;
            case "10 AWG" -> 30;
            default -> Double.POSITIVE_INFINITY;
        };
    }

    /** {@code V = 2·L·I·R/1000}, R in Ω per 1000 ft at 75 °C, solid wire up to 10 AWG and stranded above. */
    @Override
    double dropVolts(ConductorSize size, double oneWayMetres, double amperes) {
        return Ohm.twoWireDrop(ohmsPerKilofoot(size) / METRES_PER_KILOFOOT, oneWayMetres, amperes);
    }

    private static double ohmsPerKilofoot(ConductorSize size) {
        String type = size.squareMillimetres() > ConductorSize.ofGauge(10).squareMillimetres() ? "stranded" : "solid";
        for (Csv.Row row : RESISTANCE) {
            if (row.text("size").equals(size.toString()) && row.text("type").equals(type)) {
                return row.number("value");
            }
        }
        throw new IllegalArgumentException(
                "conductor: " + size + " was given; a size of Chapter 9 Table 8 is expected");
    }

    @Override
    Source dropSource(ElectricalCode code, ConductorSize size) {
        return read2023(code, "Chapter 9 Table 8 (direct-current resistance at 75 °C)");
    }

    /** A clause read in the 2023 edition; that the editions before say the same is recalled. */
    private static Source read2023(ElectricalCode code, String clause) {
        return code.name().equals("NEC 2023")
                ? Source.document(code.name(), clause)
                : Source.fromMemory(code.name() + ", " + clause);
    }
}
