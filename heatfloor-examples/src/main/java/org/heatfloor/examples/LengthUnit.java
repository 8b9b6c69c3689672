package org.heatfloor.examples;

import java.util.LinkedHashMap;
import java.util.Map;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.QuantityText;
import org.heatfloor.quantity.Units;

/** The units a room file may state its coordinates in. */
enum LengthUnit {
    MILLIMETRE(Units.MILLIMETRE),
    CENTIMETRE(Units.CENTIMETRE),
    METRE(Units.METRE),
    INCH(Units.INCH),
    FOOT(Units.FOOT);

    private final Unit<Length> unit;
    private final double metres;

    LengthUnit(Unit<Length> unit) {
        this.unit = unit;
        this.metres = Amounts.of(1, unit).to(Units.METRE).getValue().doubleValue();
    }

    static Map<String, LengthUnit> words() {
        Map<String, LengthUnit> words = new LinkedHashMap<>();
        for (LengthUnit unit : values()) {
            words.put(unit.toString(), unit);
        }
        return words;
    }

    Unit<Length> unit() {
        return unit;
    }

    double metres() {
        return metres;
    }

    boolean isImperial() {
        return this == INCH || this == FOOT;
    }

    @Override
    public String toString() {
        return QuantityText.name(unit);
    }
}
