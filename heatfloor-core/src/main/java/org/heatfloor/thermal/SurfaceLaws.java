package org.heatfloor.thermal;

import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Temperature;
import org.heatfloor.finding.Source;
import org.heatfloor.quantity.HeatTransferCoefficient;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/**
 * The published surface laws. {@code Δθ} is mean surface temperature less room temperature in kelvins, {@code D = 4·area /
 * perimeter} of the room in metres.
 *
 * <p>The ranges are this library's own, 0 to 15 K for the curve (the span of the floor limits) and 0 to 30 K for the pairs: no
 * published range was read.
 */
public final class SurfaceLaws {

    private static final Source RADIATION = Source.fromMemory("ASHRAE Handbook HVAC Systems and Equipment 2012, ch. 6,"
            + " eq. 4; formula seen in lecture notes that quote it, edition recalled");

    private static final Source HANDBOOK_PAIR = Source.fromMemory(
            "ASHRAE Handbook HVAC Systems and Equipment 2012, ch. 6 (edition recalled): convection recalled, radiation as in eq. 4");

    /** The formulas stand in a secondary text; the papers were not read. */
    private static final String RECALLED = "; the formula was seen in a secondary text, title and volume are recalled";

    private static final String PAIR_RANGE =
            "this library's own range: twice the span of the surface limits; none published was read";

    private SurfaceLaws() {}

    /**
     * The floor characteristic curve {@code q = 8.92·Δθ^1.1} W/m²: radiation and convection together. Range 0 to 15 K, the
     * span of the floor limits.
     *
     * @return the law
     */
    public static SurfaceLaw floorCurve() {
        return new SurfaceLaw(
                "floor characteristic curve",
                Source.fromMemory(
                        "EN 1264-2:2008+A1:2012, clause 6, and ISO 11855-2:2012 (editions recalled): q = 8.92·Δθ^1.1"),
                0,
                15,
                "this library's own range: the span of the surface limits, 9 K to 15 K over the room; none published was read",
                (surface, air) -> new SurfaceLaw.Film(8.92 * Math.pow(Math.abs(surface - air), 0.1), air));
    }

    /**
     * A constant coefficient, for estimates and for comparison.
     *
     * @param coefficient total coefficient, above 0 and at most 1e6 W/(m²·K)
     * @return the law
     * @throws IllegalArgumentException if the coefficient lies outside
     */
    public static SurfaceLaw constant(Quantity<HeatTransferCoefficient> coefficient) {
        Si.positive("coefficient", coefficient, Units.WATT_PER_SQUARE_METRE_KELVIN);
        double value = Si.within("coefficient", coefficient, Units.WATT_PER_SQUARE_METRE_KELVIN, 0, 1e6);
        return new SurfaceLaw(
                "constant coefficient",
                Source.brief("surface coefficient"),
                -100,
                100,
                "this library's own range: a constant has no range",
                (surface, air) -> new SurfaceLaw.Film(value, air));
    }

    /**
     * The handbook pair: radiation {@code 5·10⁻⁸·(Ts⁴ − AUST⁴)} and natural convection {@code 2.13·|Δθ|^0.31·Δθ} W/m²
     * (coefficient of the convection from memory). Surfaces of the other walls at the air temperature unless given.
     *
     * @param surroundings area-weighted mean temperature of the unheated surfaces (AUST), air temperature when empty
     * @return the law
     */
    public static SurfaceLaw radiationAndConvection(Optional<Quantity<Temperature>> surroundings) {
        return withRadiation(
                "radiation and natural convection",
                HANDBOOK_PAIR,
                surroundings,
                difference -> 2.13 * Math.pow(Math.abs(difference), 0.31));
    }

    /**
     * The handbook pair with the room's size: convection {@code 2.42·|Δθ|^0.31·Δθ / D^0.08} W/m² (from memory).
     *
     * @param surroundings AUST, air temperature when empty
     * @param roomSize {@code D}
     * @return the law
     * @throws IllegalArgumentException if the size is not above 0
     */
    public static SurfaceLaw radiationAndConvection(
            Optional<Quantity<Temperature>> surroundings, Quantity<Length> roomSize) {
        double size = Si.positive("roomSize", roomSize, Units.METRE);
        return withRadiation(
                "radiation and natural convection with room size",
                HANDBOOK_PAIR,
                surroundings,
                difference -> 2.42 * Math.pow(Math.abs(difference), 0.31) / Math.pow(size, 0.08));
    }

    /**
     * Radiation as in {@link #radiationAndConvection(Optional)} with the heated-floor convection of Awbi and Hatton
     * (1999), {@code h = 2.175·|Δθ|^0.308 / D^0.076} W/(m²·K).
     *
     * @param surroundings AUST, air temperature when empty
     * @param roomSize {@code D}
     * @return the law
     * @throws IllegalArgumentException if the size is not above 0
     */
    public static SurfaceLaw awbiHatton(Optional<Quantity<Temperature>> surroundings, Quantity<Length> roomSize) {
        double size = Si.positive("roomSize", roomSize, Units.METRE);
        return withRadiation(
                "Awbi and Hatton heated floor",
                Source.fromMemory("Awbi and Hatton, Energy and Buildings 30 (1999), heated floor" + RECALLED),
                surroundings,
                difference -> ConvectionFilms.awbiHatton(difference, size));
    }

    /**
     * Radiation with the convection of Walton (1983) over a warm floor, {@code h = 1.509·|Δθ|^(1/3)} W/(m²·K).
     *
     * @param surroundings AUST, air temperature when empty
     * @return the law
     */
    public static SurfaceLaw walton(Optional<Quantity<Temperature>> surroundings) {
        return withRadiation(
                "Walton warm floor",
                Source.fromMemory(
                        "Walton, Thermal Analysis Research Program Reference Manual (1983), natural convection"
                                + RECALLED),
                surroundings,
                ConvectionFilms::walton);
    }

    /**
     * Radiation with the convection of Alamdari and Hammond (1983) over a warm horizontal surface, {@code h =
     * ((1.4·(Δθ/D)^¼)⁶ + (1.63·Δθ^⅓)⁶)^(1/6)} W/(m²·K).
     *
     * @param surroundings AUST, air temperature when empty
     * @param roomSize {@code D}
     * @return the law
     * @throws IllegalArgumentException if the size is not above 0
     */
    public static SurfaceLaw alamdariHammond(Optional<Quantity<Temperature>> surroundings, Quantity<Length> roomSize) {
        double size = Si.positive("roomSize", roomSize, Units.METRE);
        return withRadiation(
                "Alamdari and Hammond buoyant horizontal",
                Source.fromMemory(
                        "Alamdari and Hammond, Building Services Engineering Research and Technology 4 (1983), buoyant flow, horizontal"
                                + RECALLED),
                surroundings,
                difference -> ConvectionFilms.alamdariHammond(difference, size));
    }

    /**
     * Radiation with the simple constant of Walton (1983) for heat flowing up, 4.040 W/(m²·K).
     *
     * @param surroundings AUST, air temperature when empty
     * @return the law
     */
    public static SurfaceLaw waltonConstant(Optional<Quantity<Temperature>> surroundings) {
        return withRadiation(
                "Walton simple constant",
                Source.fromMemory("Walton, Thermal Analysis Research Program Reference Manual (1983), simple algorithm"
                        + RECALLED),
                surroundings,
                difference -> ConvectionFilms.WALTON_CONSTANT);
    }

    /**
     * All laws for one room, side by side.
     *
     * @param surroundings AUST, air temperature when empty
     * @param roomSize {@code D}
     * @return the laws, the floor characteristic curve first
     */
    public static List<SurfaceLaw> sideBySide(Optional<Quantity<Temperature>> surroundings, Quantity<Length> roomSize) {
        return List.of(
                floorCurve(),
                radiationAndConvection(surroundings),
                radiationAndConvection(surroundings, roomSize),
                awbiHatton(surroundings, roomSize),
                walton(surroundings),
                alamdariHammond(surroundings, roomSize),
                waltonConstant(surroundings));
    }

    @FunctionalInterface
    private interface Convection {
        double coefficient(double differenceKelvins);
    }

    private static SurfaceLaw withRadiation(
            String name, Source source, Optional<Quantity<Temperature>> surroundings, Convection convection) {
        double fixed = surroundings.map(t -> Si.kelvin("surroundings", t)).orElse(Double.NaN);
        return new SurfaceLaw(name, source, 0, 30, PAIR_RANGE, (surface, air) -> {
            double walls = Double.isNaN(fixed) ? air : fixed;
            double radiative = ConvectionFilms.radiative(surface, walls);
            double convective = convection.coefficient(surface - air);
            double sum = radiative + convective;
            return new SurfaceLaw.Film(sum, (radiative * walls + convective * air) / sum);
        });
    }

    /**
     * What the radiation part of the pairs rests on.
     *
     * @return the source
     */
    public static Source radiationSource() {
        return RADIATION;
    }
}
