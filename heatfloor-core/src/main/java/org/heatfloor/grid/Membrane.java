package org.heatfloor.grid;

import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/**
 * A studded uncoupling membrane: a square lattice of round studs with channels between them.
 *
 * @param studPitch distance of neighbouring stud centres
 * @param studDiameter diameter of a stud
 * @param height height of a stud
 * @param stock how it is sold, where known
 */
public record Membrane(
        Quantity<Length> studPitch,
        Quantity<Length> studDiameter,
        Quantity<Length> height,
        Optional<MembraneStock> stock) {

    /**
     * Checks the sizes.
     *
     * @param studPitch distance of neighbouring stud centres
     * @param studDiameter diameter of a stud
     * @param height height of a stud
     * @param stock how it is sold, where known
     * @throws IllegalArgumentException if pitch is not 5 mm to 500 mm, the stud is not above zero and below the pitch, or
     *     the height not above zero and at most 100 mm
     */
    public Membrane {
        Objects.requireNonNull(stock, "stock");
        double pitch = Si.within("membrane stud pitch", studPitch, Units.MILLIMETRE, 5, 500);
        double stud = Si.positive("membrane stud diameter", studDiameter, Units.MILLIMETRE);
        if (!(stud < pitch)) {
            throw new IllegalArgumentException("membrane stud diameter: " + studDiameter
                    + " was given; less than the stud pitch of " + studPitch + " is expected");
        }
        Si.positive("membrane height", height, Units.MILLIMETRE);
        Si.within("membrane height", height, Units.MILLIMETRE, 0, 100);
    }
}
