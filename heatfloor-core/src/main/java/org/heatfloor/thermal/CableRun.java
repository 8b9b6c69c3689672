package org.heatfloor.thermal;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Power;
import org.heatfloor.quantity.Amounts;

/** A heating cable as laid: the cable and its centre line in metres. Arcs are given as short chords. */
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
     * @param pathMetres corners of the centre line, {@code {x, y}} in metres, at least two
     * @return the run
     * @throws IllegalArgumentException if there are fewer than two corners or one is not a pair of finite numbers
     */
    public static CableRun of(EmbeddedCable cable, double[][] pathMetres) {
        return new CableRun(cable, FloorShape.copy("cable path", pathMetres, 2));
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
     * @return a copy of the corners, metres
     */
    public double[][] pathMetres() {
        return FloorShape.copy("cable path", path, 2);
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
