package org.heatfloor.thermal;

import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.UnitConverter;
import javax.measure.quantity.Length;
import javax.measure.quantity.Power;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Units;

/** A heating cable as laid: the cable and its centre line. Arcs are given as short chords. */
public final class CableRun {

    private final EmbeddedCable cable;
    private final double[][] path;

    private CableRun(EmbeddedCable cable, double[][] path) {
        this.cable = cable;
        this.path = path;
    }

    /**
     * A cable along a path.
     *
     * @param cable the cable
     * @param path corners of the centre line, {@code {x, y}}, at least two
     * @param unit unit of the corners' numbers
     * @return the run
     * @throws IllegalArgumentException if there are fewer than two corners, one is not a pair of finite numbers or the path has
     *     no length
     */
    public static CableRun of(EmbeddedCable cable, double[][] path, Unit<Length> unit) {
        CableRun run = new CableRun(cable, FloorShape.metres("cable path", path, 2, unit));
        if (!(run.lengthMetres() > 0)) {
            throw new IllegalArgumentException("cable path: " + path.length
                    + " corners at one place were given; a path longer than 0 is expected");
        }
        return run;
    }

    /**
     * The cable.
     *
     * @return the cable
     */
    public EmbeddedCable cable() {
        return cable;
    }

    /**
     * The centre line.
     *
     * @param unit the unit wanted
     * @return a copy of the corners in that unit
     */
    public double[][] path(Unit<Length> unit) {
        UnitConverter converter = Units.METRE.getConverterTo(unit);
        double[][] copy = FloorShape.copy("cable path", path, 2);
        for (double[] corner : copy) {
            corner[0] = converter.convert(corner[0]);
            corner[1] = converter.convert(corner[1]);
        }
        return copy;
    }

    /**
     * Length of the centre line.
     *
     * @return the length
     */
    public Quantity<Length> length() {
        return Amounts.metres(lengthMetres());
    }

    /**
     * Heat the cable gives off.
     *
     * @return power a metre times length
     */
    public Quantity<Power> power() {
        return Amounts.watts(lengthMetres() * cable.powerSi());
    }

    double[][] path() {
        return path;
    }

    double lengthMetres() {
        double sum = 0;
        for (int i = 0; i + 1 < path.length; i++) {
            sum += Math.hypot(path[i + 1][0] - path[i][0], path[i + 1][1] - path[i][1]);
        }
        return sum;
    }
}
