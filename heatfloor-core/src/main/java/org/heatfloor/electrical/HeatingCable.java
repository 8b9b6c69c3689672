package org.heatfloor.electrical;

import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.ElectricResistance;
import javax.measure.quantity.Length;
import javax.measure.quantity.Power;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.LinearPower;
import org.heatfloor.quantity.LinearResistance;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/**
 * A heating cable of fixed length, as its label states it. Its core is one resistance from end to end; it must never be
 * cut, lengthened, crossed or energised on the reel.
 *
 * @param name the name its owner gives it
 * @param conductors 1 for a cable with a cold lead at both ends, 2 for a cable closed at its far end, which needs one
 * @param length length of the heating part
 * @param power rated power
 * @param voltage rated voltage
 * @param diameter outside diameter
 * @param coldLead length of one cold lead (American: nonheating lead); zero where there is none
 * @param screen its screen, or that it has none; empty where nothing is known of it
 */
public record HeatingCable(
        String name,
        int conductors,
        Quantity<Length> length,
        Quantity<Power> power,
        Quantity<ElectricPotential> voltage,
        Quantity<Length> diameter,
        Quantity<Length> coldLead,
        Optional<CableScreen> screen) {

    /**
     * Checks the figures.
     *
     * @param name the name its owner gives it
     * @param conductors 1 for a cable with a cold lead at both ends, 2 for a cable closed at its far end, which needs one
     * @param length length of the heating part
     * @param power rated power
     * @param voltage rated voltage
     * @param diameter outside diameter
     * @param coldLead length of one cold lead (American: nonheating lead); zero where there is none
     * @param screen its screen, or that it has none; empty where nothing is known of it
     * @throws IllegalArgumentException if the name is blank; conductors is not 1 or 2; the length is not above 0 and at
     *     most 1000 m; the power not above 0 and at most 100 kW; the voltage not above 0 and at most 1000 V; the diameter
     *     not above 0 and at most 50 mm; the cold lead negative or above 200 m
     */
    public HeatingCable {
        Objects.requireNonNull(screen, "screen");
        if (name.isBlank()) {
            throw new IllegalArgumentException("cable name: blank; a name is expected");
        }
        if (conductors != 1 && conductors != 2) {
            throw new IllegalArgumentException(
                    "cable " + name + " conductors: " + conductors + " was given; 1 or 2 is expected");
        }
        above("cable " + name + " length", length, Units.METRE, 1000);
        above("cable " + name + " power", power, Units.WATT, 100_000);
        above("cable " + name + " voltage", voltage, Units.VOLT, 1000);
        above("cable " + name + " diameter", diameter, Units.MILLIMETRE, 50);
        Si.within("cable " + name + " cold lead", coldLead, Units.METRE, 0, 200);
    }

    /**
     * A cable of whose screen nothing is known.
     *
     * @param name the name its owner gives it
     * @param conductors 1 for a cable with a cold lead at both ends, 2 for a cable closed at its far end
     * @param length length of the heating part
     * @param power rated power
     * @param voltage rated voltage
     * @param diameter outside diameter
     * @param coldLead length of one cold lead; zero where there is none
     * @throws IllegalArgumentException as the constructor with a screen
     */
    public HeatingCable(
            String name,
            int conductors,
            Quantity<Length> length,
            Quantity<Power> power,
            Quantity<ElectricPotential> voltage,
            Quantity<Length> diameter,
            Quantity<Length> coldLead) {
        this(name, conductors, length, power, voltage, diameter, coldLead, Optional.empty());
    }

    /**
     * The same cable with its screen stated.
     *
     * @param stated its screen, or {@link CableScreen#NONE}
     * @return the cable
     */
    public HeatingCable withScreen(CableScreen stated) {
        return new HeatingCable(name, conductors, length, power, voltage, diameter, coldLead, Optional.of(stated));
    }

    /**
     * The same cable under another name.
     *
     * @param other the name
     * @return the cable
     * @throws IllegalArgumentException if the name is blank
     */
    public HeatingCable named(String other) {
        return new HeatingCable(other, conductors, length, power, voltage, diameter, coldLead, screen);
    }

    private static <Q extends Quantity<Q>> void above(String what, Quantity<Q> quantity, Unit<Q> unit, double most) {
        Si.positive(what, quantity, unit);
        Si.within(what, quantity, unit, 0, most);
    }

    /**
     * Rated power per length of heating part, {@code P/L}.
     *
     * @return the linear power
     */
    public Quantity<LinearPower> linearPower() {
        return Amounts.of(watts() / metres(), Units.WATT_PER_METRE);
    }

    /**
     * Resistance the rating implies, {@code R = V²/P}; taken as the value at 20 °C.
     *
     * @return the nominal resistance
     */
    public Quantity<ElectricResistance> resistance() {
        return Amounts.ohms(Ohm.resistance(volts(), watts()));
    }

    /**
     * Nominal resistance per length of heating part, {@code V²/(P·L)}: of the loop, both conductors together, where the
     * cable has two.
     *
     * @return the resistance per length
     */
    public Quantity<LinearResistance> linearResistance() {
        return Amounts.of(Ohm.resistance(volts(), watts()) / metres(), Units.OHM_PER_METRE);
    }

    /**
     * How many cold leads the cable has: one at each end of a single-conductor cable, one in all on a twin-conductor one.
     *
     * @return 2 or 1
     */
    public int coldLeads() {
        return conductors == 1 ? 2 : 1;
    }

    double watts() {
        return Si.in("power", power, Units.WATT);
    }

    double volts() {
        return Si.in("voltage", voltage, Units.VOLT);
    }

    double metres() {
        return Si.in("length", length, Units.METRE);
    }
}
