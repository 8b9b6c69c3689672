package org.heatfloor.thermal;

import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.heatfloor.finding.Source;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.HeatFlux;
import org.heatfloor.quantity.HeatTransferCoefficient;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.TemperatureDifference;
import org.heatfloor.quantity.Units;

/**
 * How a floor surface gives off heat to the room. Published laws differ by about 15 %; a result names the law it used.
 * {@link SurfaceLaws} makes them.
 */
public final class SurfaceLaw {

    private final String name;
    private final Source source;
    private final double leastDifference;
    private final double mostDifference;
    private final Source rangeSource;
    private final FilmFunction function;

    SurfaceLaw(
            String name,
            Source source,
            double leastDifference,
            double mostDifference,
            String range,
            FilmFunction function) {
        this.name = name;
        this.source = source;
        this.leastDifference = leastDifference;
        this.mostDifference = mostDifference;
        this.rangeSource = Source.derived(range);
        this.function = function;
    }

    /** A film seen from the surface: {@code q = coefficient · (surface − ambient)}. */
    record Film(double coefficient, double ambientKelvin) {}

    /** The film at one surface and air temperature, both in kelvins. */
    @FunctionalInterface
    interface FilmFunction {
        Film film(double surfaceKelvin, double airKelvin);
    }

    /**
     * The law's name.
     *
     * @return the name
     */
    public String name() {
        return name;
    }

    /**
     * Where the law is published.
     *
     * @return the source
     */
    public Source source() {
        return source;
    }

    /**
     * Heat given off.
     *
     * @param surface mean temperature of the surface
     * @param air room temperature
     * @return the flux, negative when the surface takes heat in
     * @throws IllegalArgumentException if a temperature is not above absolute zero
     */
    public Quantity<HeatFlux> flux(Quantity<Temperature> surface, Quantity<Temperature> air) {
        double surfaceKelvin = Si.kelvin("surface", surface);
        Film film = film(surfaceKelvin, Si.kelvin("air", air));
        return Amounts.of(film.coefficient() * (surfaceKelvin - film.ambientKelvin()), Units.WATT_PER_SQUARE_METRE);
    }

    /**
     * The film coefficient at one pair of temperatures.
     *
     * @param surface mean temperature of the surface
     * @param air room temperature
     * @return the coefficient by which the flux follows from surface and ambient temperature
     */
    public Quantity<HeatTransferCoefficient> coefficient(Quantity<Temperature> surface, Quantity<Temperature> air) {
        return Amounts.of(
                film(Si.kelvin("surface", surface), Si.kelvin("air", air)).coefficient(),
                Units.WATT_PER_SQUARE_METRE_KELVIN);
    }

    /**
     * Least difference of surface and room temperature at which this library uses the law without a warning.
     *
     * @return the lower end of the range
     */
    public Quantity<TemperatureDifference> leastDifference() {
        return Amounts.kelvins(leastDifference);
    }

    /**
     * Greatest difference of surface and room temperature at which this library uses the law without a warning.
     *
     * @return the upper end of the range
     */
    public Quantity<TemperatureDifference> mostDifference() {
        return Amounts.kelvins(mostDifference);
    }

    /**
     * What the range rests on: no published range was read, so it is this library's own choice and says so.
     *
     * @return the source of the range
     */
    public Source rangeSource() {
        return rangeSource;
    }

    /**
     * Whether this library uses the law for this pair of temperatures without a warning.
     *
     * @param surface mean temperature of the surface
     * @param air room temperature
     * @return true inside its range
     */
    public boolean covers(Quantity<Temperature> surface, Quantity<Temperature> air) {
        double difference = Si.kelvin("surface", surface) - Si.kelvin("air", air);
        return difference >= leastDifference && difference <= mostDifference;
    }

    Film film(double surfaceKelvin, double airKelvin) {
        return function.film(surfaceKelvin, airKelvin);
    }

    @Override
    public String toString() {
        return name;
    }
}
