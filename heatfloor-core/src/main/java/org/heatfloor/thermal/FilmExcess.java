package org.heatfloor.thermal;

/**
 * The heat that stays in the floor because the law's film is weaker at a cooler surface than the one film the layers are
 * solved with: {@code h·(T − T_ambient)} of the film held, less what the law gives. SI; rises over the air.
 */
final class FilmExcess {

    private final SurfaceLaw law;
    private final double air;
    private final double film;
    private final double ambientRise;

    FilmExcess(SurfaceLaw law, double airKelvin, double film, double ambientKelvin) {
        this.law = law;
        this.air = airKelvin;
        this.film = film;
        this.ambientRise = ambientKelvin - airKelvin;
    }

    /** W/m² at a mean surface temperature so far over the air. */
    double at(double surfaceRise) {
        SurfaceLaw.Film own = law.film(air + surfaceRise, air);
        return film * (surfaceRise - ambientRise) - own.coefficient() * (air + surfaceRise - own.ambientKelvin());
    }
}
