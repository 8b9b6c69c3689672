package org.heatfloor.electrical;

import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Units;

/** Invented cables for the tests. */
final class Cables {

    private Cables() {}

    static HeatingCable twin(String name, double metres, double watts, double volts) {
        return new HeatingCable(
                name,
                2,
                Amounts.metres(metres),
                Amounts.watts(watts),
                Amounts.volts(volts),
                Amounts.of(5, Units.MILLIMETRE),
                Amounts.metres(3));
    }

    static HeatingCable single(String name, double metres, double watts, double volts) {
        return new HeatingCable(
                name,
                1,
                Amounts.metres(metres),
                Amounts.watts(watts),
                Amounts.volts(volts),
                Amounts.of(4, Units.MILLIMETRE),
                Amounts.metres(4));
    }

    static Supply supply(String code, double volts, double metres, String conductor) {
        return Supply.of(
                Amounts.volts(volts), ElectricalCode.of(code), Amounts.metres(metres), ConductorSize.of(conductor));
    }
}
