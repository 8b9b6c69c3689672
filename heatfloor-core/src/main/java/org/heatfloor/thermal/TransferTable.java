package org.heatfloor.thermal;

/**
 * The layers' response to every wavenumber the grid can hold. The response depends on one number, {@code β}, and is
 * smooth, so it is worked out exactly at even steps and carried between them by cubic interpolation; the mean mode is
 * always taken exactly.
 */
final class TransferTable {

    /** Step in β, 1/m: a quarter of what a slab of 1 m turns on. */
    private static final double LEAST_STEP = 0.25;

    private final double step;
    private final ModeTransfer.Mode[] modes;
    private final double[] factor;

    TransferTable(ModeTransfer transfer, double greatestBeta, StudFactor studs) {
        int count = (int) Math.ceil(greatestBeta / LEAST_STEP) + 4;
        this.step = LEAST_STEP;
        this.modes = new ModeTransfer.Mode[count];
        this.factor = new double[count];
        for (int i = 0; i < count; i++) {
            modes[i] = transfer.at(i * step);
            factor[i] = studs.at(i * step);
        }
    }

    int size() {
        return modes.length;
    }

    /** Surface temperature a unit of source flux at every step. */
    double[] surface(double film) {
        double[] values = new double[modes.length];
        for (int i = 0; i < values.length; i++) {
            values[i] = modes[i].surface(film) * factor[i];
        }
        return values;
    }

    /** Flux the layers take from the surface a kelvin of its temperature at every step. */
    double[] admittance() {
        double[] values = new double[modes.length];
        for (int i = 0; i < values.length; i++) {
            values[i] = modes[i].still() / modes[i].moving();
        }
        return values;
    }

    /** Temperature of the cable's plane a unit of flux at the surface, the film included, at every step. */
    double[] planeOfSurface(double film) {
        double[] values = new double[modes.length];
        for (int i = 0; i < values.length; i++) {
            values[i] = modes[i].surface(film);
        }
        return values;
    }

    /** Temperature of the cable's plane a unit of source flux at every step. */
    double[] plane(double film) {
        double[] values = new double[modes.length];
        for (int i = 0; i < values.length; i++) {
            values[i] = modes[i].plane(film);
        }
        return values;
    }

    /** Cubic interpolation of a table of {@link #surface} or {@link #plane}; even about {@code β = 0}. */
    double value(double[] table, double beta) {
        double place = beta / step;
        int i = Math.min((int) place, table.length - 3);
        double u = place - i;
        double before = table[i == 0 ? 1 : i - 1];
        double a = table[i];
        double b = table[i + 1];
        double after = table[i + 2];
        return before * (-u * (u - 1) * (u - 2) / 6)
                + a * ((u + 1) * (u - 1) * (u - 2) / 2)
                + b * (-(u + 1) * u * (u - 2) / 2)
                + after * ((u + 1) * u * (u - 1) / 6);
    }

    /** Adds a mode's share to the two table values it lies between. */
    void gather(double[] bins, double beta, double share) {
        double place = beta / step;
        int i = Math.min((int) place, bins.length - 2);
        double part = (place - i) * share;
        bins[i] += share - part;
        bins[i + 1] += part;
    }

    /** The wavenumber beyond which a surface under a film reaches less than a millionth of its mean response. */
    double faintBeyond(double film) {
        double faint = 1e-6 * modes[0].surface(film);
        int i = modes.length - 1;
        while (i > 0 && Math.abs(modes[i].surface(film)) < faint) {
            i--;
        }
        return (i + 1) * step;
    }
}
