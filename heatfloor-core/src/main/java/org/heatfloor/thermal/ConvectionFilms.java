package org.heatfloor.thermal;

/** The arithmetic of the surface laws; their sources stand in {@link SurfaceLaws}. SI. */
final class ConvectionFilms {

    /** Walton (1983), simple algorithm, heat flowing up, W/(m²·K). */
    static final double WALTON_CONSTANT = 4.040;

    private ConvectionFilms() {}

    /** Radiative film from {@code q = 5e-8 (Ts⁴ − Tr⁴)}. */
    static double radiative(double surfaceKelvin, double wallsKelvin) {
        return 5e-8 * (surfaceKelvin * surfaceKelvin + wallsKelvin * wallsKelvin) * (surfaceKelvin + wallsKelvin);
    }

    static double awbiHatton(double differenceKelvins, double sizeMetres) {
        return 2.175 * Math.pow(Math.abs(differenceKelvins), 0.308) / Math.pow(sizeMetres, 0.076);
    }

    /** {@code 9.482 |Δ|^(1/3) / (7.283 − |cos 0|)}. */
    static double walton(double differenceKelvins) {
        return 9.482 * Math.cbrt(Math.abs(differenceKelvins)) / (7.283 - 1);
    }

    static double alamdariHammond(double differenceKelvins, double sizeMetres) {
        double difference = Math.abs(differenceKelvins);
        double laminar = 1.4 * Math.pow(difference / sizeMetres, 0.25);
        double turbulent = 1.63 * Math.cbrt(difference);
        return Math.pow(Math.pow(laminar, 6) + Math.pow(turbulent, 6), 1.0 / 6);
    }
}
