package org.heatfloor.electrical;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import org.heatfloor.finding.Source;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/**
 * How far a supply voltage may lie from its nominal value.
 *
 * @param name name for a reader
 * @param below how far below, as a share of the nominal voltage, 0 to 50 %
 * @param above how far above, as a share of the nominal voltage, 0 to 50 %
 * @param source what the tolerance rests on
 */
public record SupplyTolerance(
        String name, Quantity<Dimensionless> below, Quantity<Dimensionless> above, Source source) {

    /** IEC 60038: nominal ±10 %. */
    public static final SupplyTolerance IEC_60038 = of(
            "IEC 60038", 10, 10, Source.document("IEC 60038:2009 (edition from memory)", "Table 1, 230/400 V ±10 %"));

    /** EN 50160: ten-minute means within ±10 % for 95 % of a week (the wording of the week is from memory). */
    public static final SupplyTolerance EN_50160 = of(
            "EN 50160",
            10,
            10,
            Source.document("EN 50160:2010 (edition and clause from memory)", "4.2.2, ten-minute mean within ±10 %"));

    /** EN 50160, the rest of the week: +10 % and −15 %. */
    public static final SupplyTolerance EN_50160_EXTREME = of(
            "EN 50160, all the time",
            15,
            10,
            Source.document(
                    "EN 50160:2010 (edition and clause from memory)", "4.2.2, ten-minute mean within +10 % / −15 %"));

    /** ANSI C84.1 range A at the service: ±5 %. */
    public static final SupplyTolerance ANSI_C84_1_RANGE_A = of(
            "ANSI C84.1 range A",
            5,
            5,
            Source.fromMemory("ANSI C84.1-2020, Table 1, range A service voltage, 114 V to 126 V"));

    /** ANSI C84.1 range B at the service: 110 V to 127 V on a base of 120 V. */
    public static final SupplyTolerance ANSI_C84_1_RANGE_B = of(
            "ANSI C84.1 range B",
            100 * 10 / 120.0,
            100 * 7 / 120.0,
            Source.fromMemory("ANSI C84.1-2020, Table 1, range B service voltage, 110 V to 127 V"));

    /** ANSI C84.1 range A at the load: 108 V to 126 V on a base of 120 V. */
    public static final SupplyTolerance ANSI_C84_1_RANGE_A_LOAD = of(
            "ANSI C84.1 range A, utilization",
            10,
            5,
            Source.fromMemory("ANSI C84.1-2020, Table 1, range A utilization voltage, 108 V to 126 V"));

    /** ANSI C84.1 range B at the load: 104 V to 127 V on a base of 120 V. */
    public static final SupplyTolerance ANSI_C84_1_RANGE_B_LOAD = of(
            "ANSI C84.1 range B, utilization",
            100 * 16 / 120.0,
            100 * 7 / 120.0,
            Source.fromMemory("ANSI C84.1-2020, Table 1, range B utilization voltage, 104 V to 127 V"));

    /** A supply that keeps exactly to its nominal value. */
    public static final SupplyTolerance NONE = of("none", 0, 0, Source.derived("nominal voltage"));

    /**
     * Checks the shares.
     *
     * @param name name for a reader
     * @param below how far below, as a share of the nominal voltage, 0 to 50 %
     * @param above how far above, as a share of the nominal voltage, 0 to 50 %
     * @param source what the tolerance rests on
     * @throws IllegalArgumentException if the name is blank or a share is not 0 to 50 %
     */
    public SupplyTolerance {
        Objects.requireNonNull(source, "source");
        if (name.isBlank()) {
            throw new IllegalArgumentException("supply tolerance name: blank; a name is expected");
        }
        Si.within("supply tolerance below", below, Units.PERCENT, 0, 50);
        Si.within("supply tolerance above", above, Units.PERCENT, 0, 50);
    }

    private static SupplyTolerance of(String name, double below, double above, Source source) {
        return new SupplyTolerance(name, Amounts.of(below, Units.PERCENT), Amounts.of(above, Units.PERCENT), source);
    }

    /**
     * The tolerance usual where a code applies.
     *
     * @param code the code
     * @return ANSI C84.1 range A for the NEC, otherwise IEC 60038
     */
    public static SupplyTolerance of(ElectricalCode code) {
        return code.isNec() ? ANSI_C84_1_RANGE_A : IEC_60038;
    }

    double lowFactor() {
        return 1 - Si.in("below", below, Units.ONE);
    }

    double highFactor() {
        return 1 + Si.in("above", above, Units.ONE);
    }
}
