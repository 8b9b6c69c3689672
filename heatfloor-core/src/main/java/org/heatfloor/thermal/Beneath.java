package org.heatfloor.thermal;

import javax.measure.Quantity;
import org.heatfloor.finding.Source;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.ThermalInsulance;
import org.heatfloor.quantity.Units;

/** What lies under the floor, with the least insulation EN 1264-4 asks for below a floor heating. */
public enum Beneath {
    /** A heated room: 0.75 m²·K/W. */
    HEATED_ROOM(0.75, HeatSources.insulation("heated room")),
    /** An unheated or intermittently heated room, or the ground: 1.25 m²·K/W. */
    UNHEATED_ROOM_OR_GROUND(1.25, HeatSources.insulation("unheated room or ground")),
    /** Outdoor air at a design temperature of 0 °C or more: 1.25 m²·K/W. */
    OUTDOOR_AIR_MILD(1.25, HeatSources.insulationRecalled("outdoor air at 0 °C or more")),
    /** Outdoor air at a design temperature of −5 °C to 0 °C: 1.50 m²·K/W. */
    OUTDOOR_AIR_COLD(1.50, HeatSources.insulationRecalled("outdoor air at -5 °C to 0 °C")),
    /** Outdoor air at a design temperature of −15 °C to −5 °C: 2.00 m²·K/W. */
    OUTDOOR_AIR_VERY_COLD(2.00, HeatSources.insulation("outdoor air at -15 °C to -5 °C"));

    private final double resistance;
    // A record of an enum and a text.
    @SuppressWarnings("ImmutableEnumChecker")
    private final Source source;

    Beneath(double resistance, Source source) {
        this.resistance = resistance;
        this.source = source;
    }

    /**
     * Least resistance under the heated layer.
     *
     * @return the resistance
     */
    public Quantity<ThermalInsulance> leastInsulation() {
        return Amounts.of(resistance, Units.SQUARE_METRE_KELVIN_PER_WATT);
    }

    /**
     * What it rests on.
     *
     * @return the source
     */
    public Source source() {
        return source;
    }

    /**
     * A guess from the temperature below: a heated room from 18 °C up, an unheated room or the ground from 0 °C, else
     * outdoor air.
     *
     * @param climate the climate
     * @return what most likely lies beneath
     */
    public static Beneath guess(Climate climate) {
        double celsius = Si.in("climate below", climate.below(), Units.CELSIUS);
        if (celsius >= 18) {
            return HEATED_ROOM;
        }
        if (celsius >= 0) {
            return UNHEATED_ROOM_OR_GROUND;
        }
        return celsius >= -5 ? OUTDOOR_AIR_COLD : OUTDOOR_AIR_VERY_COLD;
    }
}
