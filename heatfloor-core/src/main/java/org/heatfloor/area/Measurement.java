package org.heatfloor.area;

import javax.measure.Quantity;
import javax.measure.quantity.Length;

/**
 * One tape or laser reading and what the adjustment made of it.
 *
 * @param name the wall, or the two corners
 * @param measured as read
 * @param adjusted as it is in the adjusted room
 * @param residual adjusted less measured
 * @param standardised the residual in units of its own standard deviation; 0 where nothing checks the reading, or where the
 *     compass rule shared out a misclosure, which tells nothing about a single reading
 */
public record Measurement(
        String name,
        Quantity<Length> measured,
        Quantity<Length> adjusted,
        Quantity<Length> residual,
        double standardised) {}
