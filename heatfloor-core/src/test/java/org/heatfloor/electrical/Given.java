package org.heatfloor.electrical;

import javax.measure.Quantity;
import javax.measure.Unit;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/** Inputs of data rows as the library takes them. */
final class Given {

    private final String[] cells;

    Given(String inputs) {
        this.cells = inputs.split("\\|", -1);
    }

    String text(int i) {
        return cells[i];
    }

    double number(int i) {
        return Double.parseDouble(cells[i]);
    }

    int count() {
        return cells.length;
    }

    ElectricalCode code(int i) {
        return ElectricalCode.of(cells[i]);
    }

    ConductorSize size(int i) {
        return ConductorSize.of(cells[i]);
    }

    static <Q extends Quantity<Q>> double in(Quantity<Q> quantity, Unit<Q> unit) {
        return Si.in("figure", quantity, unit);
    }

    /** Cells: code, volts, watts, size. */
    CircuitDesign design() {
        return CircuitDesign.of(
                Supply.of(Amounts.volts(number(1)), code(0), Amounts.metres(10), size(3)),
                java.util.List.of(Cables.twin("example", 100, number(2), number(1))));
    }

    double[] numbersFrom(int first) {
        double[] numbers = new double[cells.length - first];
        for (int i = 0; i < numbers.length; i++) {
            numbers[i] = number(first + i);
        }
        return numbers;
    }

    /** Cells: code, conductors, grounding conductors, clamps, device size; the volume stands in the sixth. */
    BoxFill box(double cubicInches) {
        BoxContents contents = BoxFill.in(code(0));
        counted(text(1), contents, false);
        counted(text(2), contents, true);
        if (text(3).equals("clamps")) {
            contents.internalClamps();
        }
        if (!text(4).isEmpty()) {
            contents.device(ConductorSize.ofGauge(Integer.parseInt(text(4))), 1);
        }
        return contents.inBox(Amounts.of(cubicInches, Units.CUBIC_INCH));
    }

    private static void counted(String text, BoxContents contents, boolean grounding) {
        if (text.isEmpty()) {
            return;
        }
        for (String part : text.split("\\+", -1)) {
            int times = part.indexOf('x');
            int count = Integer.parseInt(part.substring(0, times));
            ConductorSize size = ConductorSize.ofGauge(Integer.parseInt(part.substring(times + 1)));
            if (grounding) {
                contents.groundingConductors(count, size);
            } else {
                contents.conductors(count, size);
            }
        }
    }
}
