package org.heatfloor.electrical;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.ElectricResistance;
import org.heatfloor.finding.Source;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.LinearPower;
import org.heatfloor.quantity.LinearResistance;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/**
 * What the cold lead (American: nonheating lead) takes: the current runs through two conductors of its length, in one lead
 * of a twin-conductor cable or in the two leads of a single-conductor cable, so {@code R = 2·L·r}. A meter at the end of
 * the cold lead reads this in addition to the heating part.
 *
 * @param loopResistance resistance of the cold leads at 20 °C
 * @param voltageDrop voltage lost in them at the cable's current on the supply
 * @param share the same as a share of the supply voltage
 * @param linearPower heat per length of cold lead: both conductors of a twin lead, one of a single
 * @param source what the conductor's resistance rests on
 */
public record ColdLeadDrop(
        Quantity<ElectricResistance> loopResistance,
        Quantity<ElectricPotential> voltageDrop,
        Quantity<Dimensionless> share,
        Quantity<LinearPower> linearPower,
        Source source) {

    private static final List<Csv.Row> TABLE = Csv.read("conductor-resistance.csv");
    private static final double COPPER_PER_KELVIN = 0.00393;

    /**
     * The drop for a cold lead of flexible (class 5) or stranded copper.
     *
     * @param cable the cable
     * @param size size of the cold lead's conductors: 0.5 to 10 mm² or 14 to 4 AWG
     * @param supplyVoltage voltage applied, above 0 and at most 1000 V
     * @return the drop
     * @throws IllegalArgumentException if the size is not in the tables of IEC 60228 or the NEC
     */
    public static ColdLeadDrop of(HeatingCable cable, ConductorSize size, Quantity<ElectricPotential> supplyVoltage) {
        double volts = CableRating.volts(supplyVoltage);
        double perMetre = ohmsPerMetre(size);
        double loop = 2 * Si.in("cold lead", cable.coldLead(), Units.METRE) * perMetre;
        double amperes = volts / (Ohm.resistance(cable.volts(), cable.watts()) + loop);
        int conductors = cable.conductors();
        return new ColdLeadDrop(
                Amounts.ohms(loop),
                Amounts.volts(amperes * loop),
                Amounts.of(amperes * loop / volts, Units.ONE),
                Amounts.of(conductors * amperes * amperes * perMetre, Units.WATT_PER_METRE),
                source(size));
    }

    /**
     * Resistance of one copper conductor at 20 °C: greatest value of IEC 60228 class 5, or the stranded value of NEC
     * Chapter 9 Table 8 brought from 75 °C to 20 °C.
     *
     * @param size the size
     * @return the resistance per length
     * @throws IllegalArgumentException if the size is in neither table
     */
    public static Quantity<LinearResistance> conductorResistance(ConductorSize size) {
        return Amounts.of(ohmsPerMetre(size), Units.OHM_PER_METRE);
    }

    private static double ohmsPerMetre(ConductorSize size) {
        Csv.Row row = row(size);
        double value = row.number("value");
        return row.text("unit").equals("ohm per km")
                ? value / 1000
                : value / 304.8 / Ohm.atTemperature(1, COPPER_PER_KELVIN, row.number("referenceCelsius") - 20);
    }

    private static Source source(ConductorSize size) {
        Csv.Row row = row(size);
        return Provenance.source(row.text("provenance"), row.text("source"), row.text("type"), "conductor resistance");
    }

    private static Csv.Row row(ConductorSize size) {
        for (Csv.Row row : TABLE) {
            boolean flexible =
                    row.text("type").equals("class 5") || row.text("type").equals("stranded");
            if (flexible && row.text("size").equals(size.toString())) {
                return row;
            }
        }
        throw new IllegalArgumentException(
                "cold lead conductor: " + size + " was given; 0.5 mm² to 10 mm² or 14 AWG to 4 AWG is expected");
    }
}
