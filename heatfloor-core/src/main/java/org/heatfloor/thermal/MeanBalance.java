package org.heatfloor.thermal;

/**
 * The mean mode: one-dimensional balance between the plane of the cables, the room and what lies below.
 *
 * @param surfaceKelvin mean surface temperature, K
 * @param planeKelvin mean temperature of the cable's plane, K
 * @param upward flux into the room, W/m²
 * @param downward flux below, W/m²
 * @param film the film found, W/(m²·K)
 * @param ambientKelvin the temperature the film works against, K
 */
record MeanBalance(
        double surfaceKelvin, double planeKelvin, double upward, double downward, double film, double ambientKelvin) {

    private static final int MOST_ROUNDS = 500;

    /**
     * Solves {@code q″ = up + down} for a law whose film depends on the surface temperature: the film is iterated, each
     * round halving its step with the last, and in the end the interval left. A law that never settles, none of
     * {@link SurfaceLaws} does so, throws.
     */
    static MeanBalance solve(
            double sourceFlux,
            double resistanceAbove,
            double admittanceBelow,
            SurfaceLaw law,
            double air,
            double below) {
        double surface = air + sourceFlux / 10 + 0.01;
        DrawIn drawIn = new DrawIn();
        for (int round = 0; round < MOST_ROUNDS; round++) {
            SurfaceLaw.Film film = law.film(surface, air);
            MeanBalance balance =
                    with(sourceFlux, resistanceAbove, admittanceBelow, film.coefficient(), film.ambientKelvin(), below);
            if (Math.abs(balance.surfaceKelvin - surface) <= 1e-12 * surface) {
                return balance;
            }
            // Laws rise with |Δθ|, so the plain step overshoots and its mean with the old value draws in.
            surface = drawIn.next(surface, balance.surfaceKelvin, round < 4 ? 1 : 0.5);
        }
        throw new IllegalStateException(
                "surface law '" + law.name() + "': no balance was found in " + MOST_ROUNDS + " rounds");
    }

    /** The balance for a film already known. */
    static MeanBalance with(
            double sourceFlux,
            double resistanceAbove,
            double admittanceBelow,
            double film,
            double ambient,
            double below) {
        double up = film / (1 + film * resistanceAbove);
        // Both admittances vanish only for a floor that can lose no heat at all.
        if (!(up + admittanceBelow > 0)) {
            throw new IllegalArgumentException(
                    "climate: neither the surface nor the underside gives off heat; at least one film above 0 is expected");
        }
        double plane = (sourceFlux + up * ambient + admittanceBelow * below) / (up + admittanceBelow);
        double upward = up * (plane - ambient);
        double downward = admittanceBelow * (plane - below);
        return new MeanBalance(plane - upward * resistanceAbove, plane, upward, downward, film, ambient);
    }
}
