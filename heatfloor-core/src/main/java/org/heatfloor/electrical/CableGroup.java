package org.heatfloor.electrical;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.ElectricResistance;
import javax.measure.quantity.Power;
import org.heatfloor.finding.Finding;
import org.heatfloor.finding.Severity;
import org.heatfloor.finding.Source;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.QuantityText;
import org.heatfloor.quantity.Units;

/**
 * Several cables on one thermostat. In parallel {@code 1/R = Σ 1/Rᵢ} and the powers add (T. R. Kuphaldt, Lessons in
 * Electric Circuits, vol. I, ch. 5). In series the voltage divides by resistance, so that every cable misses its rating;
 * that is refused with the powers that would follow.
 *
 * @param connection how they are joined
 * @param resistance resistance of the group at 20 °C
 * @param power power of the group
 * @param current current of the group
 * @param powers power of each cable, in the order given
 * @param findings judgements; an error for a series connection or for cables of different rated voltages
 */
public record CableGroup(
        Connection connection,
        Quantity<ElectricResistance> resistance,
        Quantity<Power> power,
        Quantity<ElectricCurrent> current,
        List<Quantity<Power>> powers,
        List<Finding> findings) {

    /** Voltages as near as this, as a share, are the same. */
    private static final double SAME = 1e-6;

    /**
     * Copies the lists.
     *
     * @param connection how they are joined
     * @param resistance resistance of the group at 20 °C
     * @param power power of the group
     * @param current current of the group
     * @param powers power of each cable, in the order given
     * @param findings judgements; an error for a series connection or for cables of different rated voltages
     */
    public CableGroup {
        Objects.requireNonNull(connection, "connection");
        powers = List.copyOf(powers);
        findings = List.copyOf(findings);
    }

    /**
     * A group on a supply.
     *
     * @param cables the cables, 1 to 100
     * @param supplyVoltage the voltage applied to the group, above 0 and at most 1000 V
     * @param connection how they are joined
     * @return the group
     * @throws IllegalArgumentException if there is no cable, more than 100, or the voltage is out of range
     */
    public static CableGroup of(
            List<HeatingCable> cables, Quantity<ElectricPotential> supplyVoltage, Connection connection) {
        if (cables.isEmpty() || cables.size() > 100) {
            throw new IllegalArgumentException("cables: " + cables.size() + " were given; 1 to 100 are expected");
        }
        double volts = CableRating.volts(supplyVoltage);
        double[] ohms = cables.stream()
                .mapToDouble(cable -> Ohm.resistance(cable.volts(), cable.watts()))
                .toArray();
        boolean series = connection == Connection.SERIES && cables.size() > 1;
        double total = series ? Arrays.stream(ohms).sum() : Ohm.parallel(ohms);
        double amperes = volts / total;
        List<Quantity<Power>> powers = new ArrayList<>();
        for (double each : ohms) {
            powers.add(Amounts.watts(series ? amperes * amperes * each : Ohm.power(volts, each)));
        }
        List<Finding> findings = new ArrayList<>();
        if (series) {
            findings.add(refusal(cables, powers));
        }
        if (!series
                && cables.stream()
                        .anyMatch(
                                cable -> Math.abs(cable.volts() / cables.get(0).volts() - 1) > SAME)) {
            findings.add(Finding.of(
                    Severity.ERROR,
                    "cable group",
                    "cables of different rated voltages stand in parallel on one supply; all but one voltage is wrong",
                    Source.document(Ohm.TEXTBOOK, "ch. 5 (in parallel every cable has the same voltage)")));
        }
        return new CableGroup(
                connection,
                Amounts.ohms(total),
                Amounts.watts(volts * amperes),
                Amounts.of(amperes, Units.AMPERE),
                powers,
                findings);
    }

    private static Finding refusal(List<HeatingCable> cables, List<Quantity<Power>> powers) {
        StringBuilder each = new StringBuilder();
        for (int i = 0; i < cables.size(); i++) {
            each.append(i == 0 ? "" : ", ")
                    .append(cables.get(i).name())
                    .append(" gives ")
                    .append(QuantityText.write(powers.get(i), 1))
                    .append(" of ")
                    .append(QuantityText.write(cables.get(i).power(), 1));
        }
        return Finding.of(
                Severity.ERROR,
                "cable group",
                "heating cables are never joined in series: the voltage divides by resistance and no cable keeps its"
                        + " rating (" + each + "); join them in parallel, each at its rated voltage",
                Source.document(Ohm.TEXTBOOK, "ch. 5 (in series the voltage divides by resistance)"));
    }
}
