package org.heatfloor.thermal;

/**
 * One lateral mode {@code cos βx} through the layers, seen from the cable's plane. Inside a layer the temperature is a
 * sum of {@code e^(±βy)}; carrying temperature and flux from one face to the other is a 2 × 2 matrix, and the stack is
 * their product. All exponentials are scaled by {@code e^(−βd)}, so that nothing overflows.
 */
final class ModeTransfer {

    private final LayerStack stack;
    private final double axisHeightMetres;
    private final double filmBelow;

    ModeTransfer(LayerStack stack, double axisHeightMetres, double filmBelow) {
        this.stack = stack;
        this.axisHeightMetres = axisHeightMetres;
        this.filmBelow = filmBelow;
    }

    /**
     * What one mode does, with the surface film left open: for a film {@code h} the surface temperature is {@code
     * source·decay/(still + moving·h)} and the cable's plane is {@code (up + across·h)/decay} times as warm.
     */
    record Mode(double still, double moving, double up, double across, double decay) {

        /** Surface temperature a unit of source flux, m²·K/W. */
        double surface(double film) {
            return decay / (still + moving * film);
        }

        /** Temperature of the cable's plane a unit of source flux, m²·K/W. */
        double plane(double film) {
            return (up + across * film) / (still + moving * film);
        }
    }

    Mode at(double beta) {
        double below = admittanceBelow(beta);
        // From the surface down: temperature and upward flux at each level, for a surface at 1 K and flux h. Two
        // columns:
        // the part that does not depend on h (t0, q0) and the factor of h (t1, q1).
        double t0 = 1;
        double q0 = 0;
        double t1 = 0;
        double q1 = 1;
        double decay = 1;
        for (int i = 0; i <= stack.heated; i++) {
            double k = stack.conductivity[i];
            double d = i == stack.heated ? stack.thicknessMetres[i] - axisHeightMetres : stack.thicknessMetres[i];
            double cosh;
            double sinhOverKBeta;
            double kBetaSinh;
            if (beta == 0) {
                cosh = 1;
                sinhOverKBeta = d / k;
                kBetaSinh = 0;
            } else {
                double twice = Math.exp(-2 * beta * d);
                decay *= Math.exp(-beta * d);
                cosh = 0.5 * (1 + twice);
                double sinh = 0.5 * -Math.expm1(-2 * beta * d);
                sinhOverKBeta = sinh / (k * beta);
                kBetaSinh = k * beta * sinh;
            }
            double n0 = t0 * cosh + q0 * sinhOverKBeta;
            q0 = q0 * cosh + t0 * kBetaSinh;
            t0 = n0;
            double n1 = t1 * cosh + q1 * sinhOverKBeta;
            q1 = q1 * cosh + t1 * kBetaSinh;
            t1 = n1;
            if (i < stack.heated) {
                t0 += stack.contact[i] * q0;
                t1 += stack.contact[i] * q1;
            }
        }
        return new Mode(q0 + below * t0, q1 + below * t1, t0, t1, decay);
    }

    /** Flux that leaves the cable's plane downwards a kelvin of its temperature, W/(m²·K). */
    double admittanceBelow(double beta) {
        double admittance = filmBelow;
        for (int i = stack.size() - 1; i >= stack.heated; i--) {
            double k = stack.conductivity[i];
            double d = i == stack.heated ? axisHeightMetres : stack.thicknessMetres[i];
            if (beta == 0) {
                admittance = admittance / (1 + admittance * d / k);
            } else {
                double tanh = Math.tanh(beta * d);
                admittance = k * beta * (admittance + k * beta * tanh) / (k * beta + admittance * tanh);
            }
            if (i > stack.heated) {
                admittance = admittance / (1 + stack.contact[i - 1] * admittance);
            }
        }
        return admittance;
    }

    /** Resistance from the cable's plane to the surface, film not counted, m²·K/W. */
    double resistanceAbove() {
        return stack.resistanceAboveHeated()
                + (stack.thicknessMetres[stack.heated] - axisHeightMetres) / stack.conductivity[stack.heated];
    }
}
