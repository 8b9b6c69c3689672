package org.heatfloor.examples;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import javax.measure.IncommensurableException;
import javax.measure.Quantity;
import javax.measure.Unit;
import org.heatfloor.quantity.QuantityText;
import org.heatfloor.quantity.Units;

/** A quantity as a plan file has it: {@code {"value": 18.42, "unit": "m"}}, in an SI unit. */
final class SiValue {

    private static final MathContext DIGITS = new MathContext(9);
    private static final List<Unit<?>> SI = List.of(
            Units.METRE,
            Units.SQUARE_METRE,
            Units.CUBIC_METRE,
            Units.KILOGRAM,
            Units.SECOND,
            Units.WATT,
            Units.JOULE,
            Units.VOLT,
            Units.AMPERE,
            Units.OHM,
            Units.FARAD,
            Units.HERTZ,
            Units.KELVIN,
            Units.WATT_PER_METRE,
            Units.WATT_PER_SQUARE_METRE,
            Units.WATT_PER_METRE_KELVIN,
            Units.SQUARE_METRE_KELVIN_PER_WATT,
            Units.WATT_PER_SQUARE_METRE_KELVIN,
            Units.WATT_PER_KELVIN,
            Units.OHM_PER_METRE,
            Units.ONE_PER_KELVIN,
            Units.KILOGRAM_PER_CUBIC_METRE,
            Units.KILOGRAM_PER_SQUARE_METRE,
            Units.JOULE_PER_KILOGRAM_KELVIN);

    private SiValue() {}

    static ObjectNode of(Quantity<?> quantity) {
        Unit<?> unit = unit(quantity.getUnit());
        try {
            double value = quantity.getUnit()
                    .getConverterToAny(unit)
                    .convert(quantity.getValue())
                    .doubleValue();
            ObjectNode node = JsonNodeFactory.instance.objectNode();
            node.set("value", number(value));
            node.put("unit", QuantityText.name(unit));
            return node;
        } catch (IncommensurableException e) {
            throw new IllegalStateException("no conversion from " + quantity.getUnit() + " to " + unit, e);
        }
    }

    /** The number in plain decimals, nine digits at most. */
    static JsonNode number(double value) {
        BigDecimal rounded = new BigDecimal(value).round(DIGITS).stripTrailingZeros();
        return JsonNodeFactory.instance.numberNode(rounded.scale() < 0 ? rounded.setScale(0) : rounded);
    }

    /** Absolute temperatures stay in degrees Celsius, angles in radians; every other unit goes to its SI unit. */
    private static Unit<?> unit(Unit<?> given) {
        if (given.equals(Units.CELSIUS) || given.equals(Units.FAHRENHEIT)) {
            return Units.CELSIUS;
        }
        if (given.equals(Units.DEGREE) || given.equals(Units.RADIAN)) {
            return Units.RADIAN;
        }
        return SI.stream()
                .filter(unit -> unit.getDimension().equals(given.getDimension()))
                .findFirst()
                .orElse(given.getDimension().equals(Units.ONE.getDimension()) ? Units.ONE : given.getSystemUnit());
    }
}
