package org.heatfloor.electrical;

import java.util.OptionalDouble;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/** Resistance a screen should show, in ohms. The margins are common practice, no source. */
final class ScreenKernel {

    private static final double SHARE = 0.2;
    private static final double CONTACT_OHMS = 0.5;
    private static final double COPPER_PER_KELVIN = 0.00393;

    private ScreenKernel() {}

    /** The whole screen at 20 °C, cold leads included; empty where it is not stated. */
    static OptionalDouble at20(HeatingCable cable) {
        return cable.screen().flatMap(CableScreen::linearResistance).stream()
                .mapToDouble(perMetre -> Si.in("screen", perMetre, Units.OHM_PER_METRE)
                        * (cable.metres() + cable.coldLeads() * Si.in("cold lead", cable.coldLead(), Units.METRE)))
                .findFirst();
    }

    /** Least, nominal and greatest. */
    static double[] band(double at20, int conductors, double celsius) {
        double ohms = Ohm.atTemperature(at20, COPPER_PER_KELVIN, celsius - 20);
        return new double[] {conductors == 1 ? ohms * (1 - SHARE) : 0, ohms, ohms * (1 + SHARE) + CONTACT_OHMS};
    }
}
