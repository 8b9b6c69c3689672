package org.heatfloor.thermal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.UnitConverter;
import javax.measure.quantity.Length;
import javax.measure.quantity.Power;
import javax.measure.quantity.Temperature;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.HeatFlux;
import org.heatfloor.quantity.HeatTransferCoefficient;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/**
 * Steady surface temperature of a whole floor with its cables as laid, exact for layers that are uniform over the floor:
 * the heat of the cables is written in cosine modes on the bounding rectangle with insulated edges, every mode is carried
 * through the layers, and the modes are summed on a grid of 10 mm or finer. So gaps, turns and missed corners show. Covers
 * are no modes; their film differs from place to place, and the field is solved for it by iteration, the layers still exact.
 *
 * <p>The surface film is one number for the floor, found by the law at the mean surface temperature of the heated part.
 * Where the floor is not a rectangle, the model's floor goes on to the rectangle's edges.
 */
public final class FloorField {

    private final FieldGrid grid;
    private final FloorShape floor;
    private final List<CableRun> cables;
    private final SurfaceLaw law;
    private final double heatedWithin;
    private final FieldSolution solution;
    private final boolean[][] floorMask;
    private final boolean[][] heatedMask;
    private final List<FloorCover> covers;

    FloorField(
            FieldGrid grid,
            FloorShape floor,
            List<CableRun> cables,
            SurfaceLaw law,
            double heatedWithin,
            FieldSolution solution,
            boolean[][] floorMask,
            boolean[][] heatedMask,
            List<FloorCover> covers) {
        this.grid = grid;
        this.floor = floor;
        this.cables = cables;
        this.law = law;
        this.heatedWithin = heatedWithin;
        this.solution = solution;
        this.floorMask = floorMask;
        this.heatedMask = heatedMask;
        this.covers = covers;
    }

    /**
     * Starts a field.
     *
     * @param buildUp the layers
     * @param climate room and space below
     * @param floor the floor
     * @return a builder with the floor characteristic curve and a grid of 10 mm
     */
    public static FloorFieldBuilder builder(BuildUp buildUp, Climate climate, FloorShape floor) {
        return new FloorFieldBuilder(buildUp, climate, floor);
    }

    /**
     * Surface temperature of the tile at a place, under a cover too: the modes summed there, not interpolated.
     *
     * @param x distance along x
     * @param y distance along y
     * @return the temperature
     * @throws IllegalArgumentException if the place lies outside the bounding rectangle
     */
    public Quantity<Temperature> at(Quantity<Length> x, Quantity<Length> y) {
        return SteadySection.celsius(ModeSum.at(grid, solution.surfaceModes(), metres(x), metres(y)));
    }

    /**
     * Temperature in the plane of the cables at a place, as a floor sensor in a channel or a seal beside the cables meets
     * it. Within one and a half grid steps of a cable it tends to the sheath's temperature and is not resolved. Where cables lie
     * at several heights, each cable's part is that in its own plane.
     *
     * @param x distance along x
     * @param y distance along y
     * @return the temperature
     * @throws IllegalArgumentException if the place lies outside the bounding rectangle
     */
    public Quantity<Temperature> inCablePlane(Quantity<Length> x, Quantity<Length> y) {
        return SteadySection.celsius(ModeSum.at(grid, solution.planeModes(), metres(x), metres(y)));
    }

    /**
     * Warmest temperature that anything touching the floor meets at some places: surface or cables' plane, whichever is warmer.
     *
     * @param places the places, {@code {x, y}}, at least one
     * @param unit unit of their numbers
     * @return the warmest
     * @throws IllegalArgumentException if there is no place or one lies outside the bounding rectangle
     */
    public Quantity<Temperature> warmestOf(double[][] places, Unit<Length> unit) {
        double[][] plane = solution.planeModes();
        double warmest = 0;
        for (double[] place : FloorShape.metres("places", places, 1, unit)) {
            warmest = Math.max(warmest, ModeSum.at(grid, solution.surfaceModes(), place[0], place[1]));
            warmest = Math.max(warmest, ModeSum.at(grid, plane, place[0], place[1]));
        }
        return SteadySection.celsius(warmest);
    }

    /**
     * What a floor sensor in the plane of the cables reads at a place, beside the surface it stands for.
     *
     * @param x distance along x
     * @param y distance along y
     * @return the reading
     * @throws IllegalArgumentException if the place lies outside the bounding rectangle
     */
    public SensorReading sensorAt(Quantity<Length> x, Quantity<Length> y) {
        Quantity<Temperature> reading = inCablePlane(x, y);
        SurfaceSummary summary = heated();
        double kelvin = Si.kelvin("reading", reading);
        return new SensorReading(
                reading,
                summary.mean(),
                summary.max(),
                Amounts.kelvins(kelvin - Si.kelvin("mean", summary.mean())),
                Amounts.kelvins(kelvin - Si.kelvin("max", summary.max())));
    }

    /**
     * The floor as a whole.
     *
     * @return its summary
     */
    public SurfaceSummary floor() {
        return FieldSummary.over(grid, solution.surfaceKelvin(), floorMask, "floor");
    }

    /**
     * The heated part: the floor within half the even spacing of a cable.
     *
     * @return its summary
     */
    public SurfaceSummary heated() {
        return FieldSummary.over(grid, solution.surfaceKelvin(), heatedMask, "heated part");
    }

    /**
     * The floor within a distance of one cable.
     *
     * @param cableIndex which cable, counted from 0 as given
     * @return its summary
     * @throws IllegalArgumentException if there is no such cable
     */
    public SurfaceSummary heatedBy(int cableIndex) {
        if (!(cableIndex >= 0 && cableIndex < cables.size())) {
            throw new IllegalArgumentException(
                    "cableIndex: " + cableIndex + " was given; 0 to " + (cables.size() - 1) + " is expected");
        }
        boolean[][] mask = HeatedMask.near(grid, floorMask, List.of(cables.get(cableIndex)), heatedWithin);
        return FieldSummary.over(grid, solution.surfaceKelvin(), mask, "part heated by cable " + cableIndex);
    }

    /**
     * A part of the floor, where it holds any node of the grid.
     *
     * @param part the part
     * @return its summary; empty when no node lies in it
     */
    public Optional<SurfaceSummary> within(FloorShape part) {
        return FieldSummary.of(grid, solution.surfaceKelvin(), maskOf(List.of(part)));
    }

    /**
     * The heated part without some parts of the floor.
     *
     * @param parts what is left out
     * @return the summary of the rest; empty when nothing is left
     */
    public Optional<SurfaceSummary> heatedWithout(List<FloorShape> parts) {
        boolean[][] out = maskOf(parts);
        for (int j = 0; j < out.length; j++) {
            for (int i = 0; i < out[j].length; i++) {
                out[j][i] = heatedMask[j][i] && !out[j][i];
            }
        }
        return FieldSummary.of(grid, solution.surfaceKelvin(), out);
    }

    /**
     * Connected places cooler than a temperature.
     *
     * @param parts where to look, for example where cable may lie
     * @param below what counts as cold
     * @return the places, the largest first
     * @throws IllegalArgumentException if the temperature is not absolute
     */
    public List<ColdPlace> coldPlaces(List<FloorShape> parts, Quantity<Temperature> below) {
        return ColdSearch.places(grid, solution.surfaceKelvin(), maskOf(parts), Si.kelvin("below", below));
    }

    /** Nodes of the floor in any of some parts. */
    private boolean[][] maskOf(List<FloorShape> parts) {
        boolean[][] any = new boolean[grid.ny() + 1][grid.nx() + 1];
        for (FloorShape part : parts) {
            boolean[][] mask = part.mask(grid);
            for (int j = 0; j < any.length; j++) {
                for (int i = 0; i < any[j].length; i++) {
                    any[j][i] |= mask[j][i] && floorMask[j][i];
                }
            }
        }
        return any;
    }

    /**
     * The floor under each cover.
     *
     * @return one entry a cover, in the order given
     * @throws IllegalArgumentException if no node of the grid lies under a cover
     */
    public List<CoveredPart> covered() {
        double[][] open = solution.openKelvin();
        double[][] plane = GridModes.toNodes(grid, solution.planeRiseModes());
        List<CoveredPart> parts = new ArrayList<>();
        for (FloorCover cover : covers) {
            boolean[][] mask = cover.shape().mask(grid);
            HeatedMask.and(mask, floorMask);
            SurfaceSummary tile = FieldSummary.over(grid, solution.surfaceKelvin(), mask, "cover " + cover.name());
            double rise = 0;
            for (int j = 0; j <= grid.ny(); j++) {
                for (int i = 0; i <= grid.nx(); i++) {
                    rise = mask[j][i] ? Math.max(rise, plane[j][i]) : rise;
                }
            }
            parts.add(new CoveredPart(
                    cover, tile, FieldSummary.over(grid, open, mask, "cover").max(), Amounts.kelvins(rise)));
        }
        return List.copyOf(parts);
    }

    /**
     * Heat into the room: the film, under covers with their resistance, times the surface's excess temperature, summed over
     * the grid.
     *
     * @return power upwards over the bounding rectangle
     */
    public Quantity<Power> upward() {
        boolean[][] all = new boolean[grid.ny() + 1][grid.nx() + 1];
        for (boolean[] row : all) {
            Arrays.fill(row, true);
        }
        return Amounts.watts(upwardSum(all)[0] * grid.cellArea());
    }

    /**
     * Heat the floor itself gives the room, parts that are cooler than the room taking heat from it: as {@link #upward}, but
     * without what the model's floor gives beyond the shape.
     *
     * @return power upwards over the floor
     */
    public Quantity<Power> intoRoom() {
        return Amounts.watts(upwardSum(floorMask)[0] * grid.cellArea());
    }

    /** Flux upwards times weight, and the weights, summed over a mask. */
    private double[] upwardSum(boolean[][] mask) {
        double sum = 0;
        double weights = 0;
        double[][] t = solution.surfaceKelvin();
        for (int j = 0; j <= grid.ny(); j++) {
            for (int i = 0; i <= grid.nx(); i++) {
                if (mask[j][i]) {
                    double weight = grid.weight(i, j);
                    weights += weight;
                    sum += weight * solution.filmAt(i, j) * (t[j][i] - solution.ambientKelvin());
                }
            }
        }
        return new double[] {sum, weights};
    }

    /**
     * Heat lost below.
     *
     * @return power downwards over the bounding rectangle
     */
    public Quantity<Power> downward() {
        return Amounts.watts(solution.downwardFlux() * grid.width() * grid.height());
    }

    /**
     * Heat the cables give off.
     *
     * @return the sum over the cables
     */
    public Quantity<Power> supplied() {
        double sum = 0;
        for (CableRun cable : cables) {
            sum += Si.in("power", cable.power(), Units.WATT);
        }
        return Amounts.watts(sum);
    }

    /**
     * Mean flux of the heated part into the room.
     *
     * @return the film times the excess temperature, averaged over the heated part
     */
    public Quantity<HeatFlux> upwardFluxHeated() {
        double[] sum = upwardSum(heatedMask);
        return Amounts.of(sum[1] > 0 ? sum[0] / sum[1] : 0, Units.WATT_PER_SQUARE_METRE);
    }

    /**
     * The surface film found.
     *
     * @return the coefficient
     */
    public Quantity<HeatTransferCoefficient> film() {
        return Amounts.of(solution.film(), Units.WATT_PER_SQUARE_METRE_KELVIN);
    }

    /**
     * The surface law used.
     *
     * @return the law
     */
    public SurfaceLaw law() {
        return law;
    }

    /**
     * The floor.
     *
     * @return the shape given
     */
    public FloorShape shape() {
        return floor;
    }

    /**
     * Distance from a cable within which the floor counts as heated.
     *
     * @return half the even spacing
     */
    public Quantity<Length> heatedWithin() {
        return Amounts.metres(heatedWithin);
    }

    /**
     * Step of the grid along x.
     *
     * @return 10 mm or less
     */
    public Quantity<Length> stepX() {
        return Amounts.metres(grid.stepX());
    }

    /**
     * Step of the grid along y.
     *
     * @return 10 mm or less
     */
    public Quantity<Length> stepY() {
        return Amounts.metres(grid.stepY());
    }

    /**
     * The surface on the grid, for drawing: row by row upwards from the lower left corner of the bounding rectangle,
     * edges included.
     *
     * @param unit the unit wanted
     * @return a copy in that unit; {@code NaN} outside the floor
     */
    public double[][] surfaceGrid(Unit<Temperature> unit) {
        UnitConverter converter = Units.KELVIN.getConverterTo(unit);
        double[][] t = solution.surfaceKelvin();
        double[][] copy = grid.empty();
        for (int j = 0; j <= grid.ny(); j++) {
            for (int i = 0; i <= grid.nx(); i++) {
                copy[j][i] = floorMask[j][i] ? converter.convert(t[j][i]) : Double.NaN;
            }
        }
        return copy;
    }

    private static double metres(Quantity<Length> place) {
        return Si.in("place", place, Units.METRE);
    }
}
