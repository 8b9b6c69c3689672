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
    MILLIMETRE,
    CENTIMETRE,
    METRE,
    INCH,
    FOOT;

    static Map<String, LengthUnit> words() {
        Map<String, LengthUnit> words = new LinkedHashMap<>();
        for (LengthUnit unit : values()) {
            words.put(unit.toString(), unit);
        }
        return words;
    }

    Unit<Length> unit() {
        return switch (this) {
            case MILLIMETRE -> Units.MILLIMETRE;
            case CENTIMETRE -> Units.CENTIMETRE;
            case METRE -> Units.METRE;
            case INCH -> Units.INCH;
            case FOOT -> Units.FOOT;
        };
    }

    double metres() {
        return Amounts.of(1, unit()).to(Units.METRE).getValue().doubleValue();
    }

    boolean isImperial() {
        return this == INCH || this == FOOT;
    }

    @Override
    public String toString() {
        return QuantityText.name(unit());
    }
}
