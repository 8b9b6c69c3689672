package org.heatfloor.thermal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import net.jqwik.api.constraints.Scale;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Units;

/** Laws of linear heat conduction that any right answer keeps. */
class HeatLawProperties {

    private static final double WIDTH = 0.9;
    private static final double HEIGHT = 0.7;
    private static final FloorShape FLOOR = Floors.rectangle(0, 0, WIDTH, HEIGHT);
    /** Room and space below at one temperature, so that rises are over 20 °C. */
    private static final Climate EVEN = Floors.climate(20, 20, 2);

    private static FloorField field(double[][]... paths) {
        return field(11, paths);
    }

    private static FloorField field(double power, double[][]... paths) {
        FloorFieldBuilder builder =
                FloorField.builder(Floors.washroom(), EVEN, FLOOR).law(Floors.film(10.8));
        for (double[][] path : paths) {
            builder.cable(Floors.run(Floors.cable(power, 2.5, 6.5), path));
        }
        return builder.solve();
    }

    private static double rise(FloorField field, double x, double y) {
        return Floors.celsius(Floors.at(field, x, y)) - 20;
    }

    @Property(tries = 20)
    void heatsAdd(
            @ForAll long seed, @ForAll @DoubleRange(max = 0.9) double x, @ForAll @DoubleRange(max = 0.7) double y) {
        double[][] a = Routes.wandering(seed, WIDTH, HEIGHT, 5);
        double[][] b = Routes.wandering(~seed, WIDTH, HEIGHT, 4);
        assertThat(rise(field(a, b), x, y)).isCloseTo(rise(field(a), x, y) + rise(field(b), x, y), within(1e-9));
    }

    @Property(tries = 20)
    void heatScalesWithPower(@ForAll long seed, @ForAll @DoubleRange(min = 0.1, max = 15) double factor) {
        double[][] path = Routes.wandering(seed, WIDTH, HEIGHT, 6);
        double one = rise(field(1, path), 0.4, 0.3);
        assertThat(rise(field(factor, path), 0.4, 0.3)).isCloseTo(factor * one, within(1e-8));
    }

    /** What a short cable at A does to B, the same cable at B does to A; both on nodes of the grid, where nothing is interpolated. */
    @Property(tries = 20)
    void sourceAndReceiverMayBeSwapped(
            @ForAll @DoubleRange(min = 0.02, max = 0.98) double ax,
            @ForAll @DoubleRange(min = 0.02, max = 0.98) double ay,
            @ForAll @DoubleRange(min = 0.02, max = 0.98) double bx,
            @ForAll @DoubleRange(min = 0.02, max = 0.98) double by) {
        double[] a = node(ax, ay);
        double[] b = node(bx, by);
        double there = rise(field(200, dot(a[0], a[1])), b[0], b[1]);
        double back = rise(field(200, dot(b[0], b[1])), a[0], a[1]);
        assertThat(back).isCloseTo(there, within(1e-9 + 1e-6 * Math.abs(there)));
    }

    private static double[] node(double shareX, double shareY) {
        double[][] grid = field(200, dot(0.1, 0.1)).surfaceGrid(Units.CELSIUS);
        int nx = grid[0].length - 1;
        int ny = grid.length - 1;
        return new double[] {Math.rint(shareX * nx) / nx * WIDTH, Math.rint(shareY * ny) / ny * HEIGHT};
    }

    private static double[][] dot(double x, double y) {
        return new double[][] {{x - 5e-6, y}, {x + 5e-6, y}};
    }

    @Property(tries = 20)
    void mirroredRouteGivesMirroredField(@ForAll long seed) {
        double[][] path = Routes.wandering(seed, WIDTH, HEIGHT, 6);
        FloorField plain = field(path);
        FloorField mirrored = field(Routes.mirrored(path, WIDTH));
        double[][] a = plain.surfaceGrid(Units.CELSIUS);
        double[][] b = mirrored.surfaceGrid(Units.CELSIUS);
        int last = a[0].length - 1;
        for (int j = 0; j < a.length; j += 7) {
            for (int i = 0; i <= last; i += 5) {
                assertThat(b[j][last - i]).isCloseTo(a[j][i], within(1e-9));
            }
        }
    }

    @Property(tries = 30)
    void heatInIsHeatOut(
            @ForAll long seed,
            @ForAll @IntRange(min = 2, max = 12) int corners,
            @ForAll @DoubleRange(min = 1, max = 25) double power,
            @ForAll @DoubleRange(min = -10, max = 20) double below) {
        FloorField field = FloorField.builder(Floors.washroom(), Floors.climate(21, below, 5.88), FLOOR)
                .cable(Floors.run(Floors.cable(power, 2.5, 6.5), Routes.wandering(seed, WIDTH, HEIGHT, corners)))
                .solve();
        double supplied = Floors.value(field.supplied());
        assertThat(Floors.value(field.upward()) + Floors.value(field.downward()))
                .isCloseTo(supplied, within(1e-9 * supplied));
    }

    /** The surface ends 4 mK below the air, where the film hardly is one and plain steps swing about for long. */
    @Example
    void heatInIsHeatOutWhereTheSurfaceIsNearlyAsWarmAsTheAir() {
        heatInIsHeatOut(2_783_346_010_474_531_309L, 6, 1.01, 0.15);
    }

    @Property(tries = 100)
    void sectionHeatInIsHeatOut(
            @ForAll @DoubleRange(min = 1, max = 25) double power,
            @ForAll @DoubleRange(min = 30, max = 300) double spacing,
            @ForAll @DoubleRange(min = -10, max = 25) double below) {
        SteadySection section = SteadySection.of(
                Floors.washroom(),
                Floors.climate(21, below, 5.88),
                Floors.cable(power, 2.5, 6.5),
                Amounts.millimetres(spacing));
        double density = Floors.value(section.powerDensity());
        assertThat(Floors.value(section.upward()) + Floors.value(section.downward()))
                .isCloseTo(density, within(1e-9 * density));
        assertThat(Floors.celsius(section.surfaceMax())).isGreaterThanOrEqualTo(Floors.celsius(section.surfaceMean()));
        assertThat(Floors.celsius(section.surfaceMean())).isGreaterThanOrEqualTo(Floors.celsius(section.surfaceMin()));
        assertThat(Floors.celsius(section.sheath())).isGreaterThan(Floors.celsius(section.surfaceMax()));
    }

    /** A thicker cover: cooler surface, hotter sheath, more heat down. */
    @Property(tries = 100)
    void coverResistanceIsMonotone(
            @ForAll @DoubleRange(min = 1, max = 20) double thin,
            @ForAll @DoubleRange(min = 0.5, max = 20) double more) {
        SteadySection a = covered(thin);
        SteadySection b = covered(thin + more);
        assertThat(Floors.celsius(b.surfaceMean())).isLessThan(Floors.celsius(a.surfaceMean()));
        assertThat(Floors.celsius(b.sheath())).isGreaterThan(Floors.celsius(a.sheath()));
        assertThat(Floors.value(b.downward())).isGreaterThan(Floors.value(a.downward()));
        assertThat(Floors.value(b.ripple())).isLessThan(Floors.value(a.ripple()));
    }

    private static SteadySection covered(double millimetres) {
        return SteadySection.of(
                Floors.washroom().coveredBy(Floors.layer(millimetres, 0.06, false)),
                Floors.climate(21, 12, 5.88),
                Floors.cable(11, 2.5, 6.5),
                Amounts.millimetres(102));
    }

    /** The same floor written in inches, feet and degrees Fahrenheit. */
    @Property(tries = 50)
    void unitsDoNotMatter(
            @ForAll @DoubleRange(min = 4, max = 30) double tile,
            @ForAll @DoubleRange(min = 60, max = 200) double spacing,
            @ForAll @DoubleRange(min = 10, max = 25) double air) {
        SteadySection metric = SteadySection.of(
                BuildUp.of(List.of(Floors.layer(tile, 1.3, false), Floors.layer(12, 1.0, true))),
                Floors.climate(air, 12, 1),
                Floors.cable(11, 2.5, 6.5),
                Amounts.millimetres(spacing));
        BuildUp inches = BuildUp.of(List.of(
                Layer.of("tile", Amounts.inches(tile / 25.4), Amounts.wattsPerMetreKelvin(1.3)),
                Layer.heated("mortar", Amounts.feet(12 / 304.8), Amounts.wattsPerMetreKelvin(1.0))));
        Climate fahrenheit = Climate.of(
                        Amounts.of(air * 1.8 + 32, Units.FAHRENHEIT), Amounts.of(12 * 1.8 + 32, Units.FAHRENHEIT))
                .withFilmBelow(Amounts.of(1, Units.WATT_PER_SQUARE_METRE_KELVIN));
        SteadySection imperial = SteadySection.of(
                inches,
                fahrenheit,
                new EmbeddedCable(
                        Amounts.of(11 * 0.3048, Units.WATT_PER_FOOT),
                        Amounts.inches(5 / 25.4),
                        Amounts.inches(6.5 / 25.4)),
                Amounts.feet(spacing / 304.8));
        assertThat(Floors.celsius(imperial.surfaceMean()))
                .isCloseTo(Floors.celsius(metric.surfaceMean()), within(1e-9));
        assertThat(Floors.celsius(imperial.sheath())).isCloseTo(Floors.celsius(metric.sheath()), within(1e-9));
    }

    /** The whole floor given in inches, feet and degrees Fahrenheit is the same floor. */
    @Property(tries = 15)
    void fieldDoesNotDependOnUnits(
            @ForAll @LongRange(min = 0, max = 1000) long seed, @ForAll @DoubleRange(min = 15, max = 24) double air) {
        double[][] path = Routes.wandering(seed, WIDTH, HEIGHT, 5);
        FloorField metric = FloorField.builder(Floors.washroom(), Floors.climate(air, 12, 1), FLOOR)
                .cable(Floors.run(Floors.cable(11, 2.5, 6.5), path))
                .heatedWithin(Amounts.millimetres(51))
                .solve();
        double[][] feet = new double[path.length][];
        for (int i = 0; i < path.length; i++) {
            feet[i] = new double[] {path[i][0] / 0.3048, path[i][1] / 0.3048};
        }
        double w = WIDTH / 0.0254;
        double h = HEIGHT / 0.0254;
        FloorField imperial = FloorField.builder(
                        Floors.washroom(),
                        Climate.of(
                                        Amounts.of(air * 1.8 + 32, Units.FAHRENHEIT),
                                        Amounts.of(12 * 1.8 + 32, Units.FAHRENHEIT))
                                .withFilmBelow(Amounts.of(1, Units.WATT_PER_SQUARE_METRE_KELVIN)),
                        FloorShape.of(new double[][] {{0, 0}, {w, 0}, {w, h}, {0, h}}, List.of(), Units.INCH))
                .cable(CableRun.of(
                        new EmbeddedCable(
                                Amounts.of(11 * 0.3048, Units.WATT_PER_FOOT),
                                Amounts.inches(5 / 25.4),
                                Amounts.inches(6.5 / 25.4)),
                        feet,
                        Units.FOOT))
                .heatedWithin(Amounts.inches(51 / 25.4))
                .solve();
        assertThat(Floors.celsius(Floors.at(imperial, 0.4, 0.3)))
                .isCloseTo(Floors.celsius(Floors.at(metric, 0.4, 0.3)), within(1e-8));
        assertThat(Floors.celsius(imperial.floor().max()))
                .isCloseTo(Floors.celsius(metric.floor().max()), within(1e-8));
        assertThat(Floors.value(imperial.upward().to(Units.WATT)))
                .isCloseTo(Floors.value(metric.upward().to(Units.WATT)), within(1e-8));
    }

    /** Heating up never overtakes the steady state and never turns back. */
    @Property(tries = 15)
    void heatUpIsMonotone(
            @ForAll @DoubleRange(min = 60, max = 200) double spacing,
            @ForAll @DoubleRange(min = 0.02, max = 0.98) @Scale(3) double share) {
        HeatUp heatUp = HeatUp.fromCold(
                Floors.washroom(),
                Floors.climate(20, 20, 5.88),
                SurfaceLaws.floorCurve(),
                Floors.cable(11, 2.5, 6.5),
                Amounts.millimetres(spacing));
        double sooner = Floors.value(
                heatUp.timeToShare(Amounts.of(share * 0.9, Units.ONE)).orElseThrow());
        double later =
                Floors.value(heatUp.timeToShare(Amounts.of(share, Units.ONE)).orElseThrow());
        assertThat(later).isGreaterThan(sooner);
        assertThat(Floors.celsius(heatUp.surfaceAfter(Amounts.seconds(later))))
                .isLessThan(Floors.celsius(heatUp.steadySurface()));
    }

    @Property(tries = 10)
    void sameInputSameAnswer(@ForAll @LongRange(min = 0, max = 1000) long seed) {
        double[][] path = Routes.wandering(seed, WIDTH, HEIGHT, 6);
        assertThat(field(path).surfaceGrid(Units.CELSIUS))
                .isDeepEqualTo(field(path).surfaceGrid(Units.CELSIUS));
    }
}
