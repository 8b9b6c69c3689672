package org.heatfloor.thermal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/** Gathers what a {@link FloorField} needs. Not safe to share between threads; the field is. */
public final class FloorFieldBuilder {

    private static final double COARSEST_STEP = 0.01;
    /** A step of two thirds of the cable's cover leaves out less than 0.01 K at 150 W/m². */
    private static final double STEP_TO_COVER = 2.0 / 3;

    private static final long MOST_NODES = 1L << 23;

    private final BuildUp buildUp;
    private final Climate climate;
    private final FloorShape floor;
    private final List<CableRun> cables = new ArrayList<>();
    private SurfaceLaw law = SurfaceLaws.floorCurve();
    private double resolution = COARSEST_STEP;
    private Optional<Double> heatedWithin = Optional.empty();
    private final List<FloorCover> covers = new ArrayList<>();
    private Optional<StuddedLayer> studs = Optional.empty();

    FloorFieldBuilder(BuildUp buildUp, Climate climate, FloorShape floor) {
        this.buildUp = buildUp;
        this.climate = climate;
        this.floor = floor;
    }

    /**
     * Chooses the surface law; the floor characteristic curve if not called.
     *
     * @param chosen the law
     * @return this builder
     */
    public FloorFieldBuilder law(SurfaceLaw chosen) {
        this.law = chosen;
        return this;
    }

    /**
     * Adds a cable.
     *
     * @param run the cable as laid
     * @return this builder
     * @throws IllegalArgumentException if the cable reaches out of the heated layer or its path leaves the floor
     */
    public FloorFieldBuilder cable(CableRun run) {
        run.cable().checkInside(buildUp);
        floor.leaves(run.path()).ifPresent(place -> {
            throw new IllegalArgumentException("cable path: a place at " + place[0] + " m, " + place[1]
                    + " m was given; it lies outside the floor, a path inside is expected");
        });
        cables.add(run);
        return this;
    }

    /**
     * Sets the distance from a cable within which the floor counts as heated; if not called, half the floor's area over
     * the cables' length.
     *
     * @param distance half the even spacing, above 0
     * @return this builder
     */
    public FloorFieldBuilder heatedWithin(Quantity<Length> distance) {
        this.heatedWithin = Optional.of(Si.positive("heatedWithin", distance, Units.METRE));
        return this;
    }

    /**
     * Lays a rug, a mat or furniture without feet on the floor. Where covers overlap their resistances add.
     *
     * @param cover the cover; what lies beyond the floor's bounding rectangle does nothing
     * @return this builder
     */
    public FloorFieldBuilder cover(FloorCover cover) {
        covers.add(cover);
        return this;
    }

    /**
     * Says that the heated layer is a studded membrane. Its conductivity is replaced by the parallel mixture, and every
     * mode of the surface is made stronger or weaker as the studs beside a straight cable make it, see {@link
     * StuddedLayer}; in turns that is an approximation.
     *
     * @param studded the studs
     * @return this builder
     */
    public FloorFieldBuilder studs(StuddedLayer studded) {
        this.studs = Optional.of(studded);
        return this;
    }

    /**
     * Sets the coarsest step of the grid, 10 mm if not called; a shallow cable makes the grid finer by itself.
     *
     * @param step 0.5 mm to 10 mm
     * @return this builder
     */
    public FloorFieldBuilder resolution(Quantity<Length> step) {
        this.resolution = Si.within("resolution", step, Units.METRE, 0.0005, COARSEST_STEP);
        return this;
    }

    /**
     * Solves the field.
     *
     * @return the field
     * @throws IllegalArgumentException if no cable was given, the grid would have more than 8 million nodes, or studs were
     *     given that are not as high as the heated layer is thick or leave a cable no channel
     * @throws IllegalStateException if no film balances the surface law; no law of {@link SurfaceLaws} is known to do that
     */
    public FloorField solve() {
        if (cables.isEmpty()) {
            throw new IllegalArgumentException("cables: none was given; at least one is expected");
        }
        LayerStack stack = LayerStack.of(studs.map(s -> s.homogenised(buildUp)).orElse(buildUp));
        double step = resolution;
        double length = 0;
        for (CableRun run : cables) {
            step = Math.min(step, STEP_TO_COVER * stack.coverMetres(run.cable().axisHeightMetres()));
            length += run.lengthMetres();
        }
        double[] box = floor.bounds();
        double width = box[2] - box[0];
        double height = box[3] - box[1];
        // The grid's steps are at least half as long as asked for.
        if (!(4 * width / step * height / step <= MOST_NODES)) {
            throw new IllegalArgumentException("floor: " + width + " m by " + height + " m at a step of " + step
                    + " m was given; at most " + MOST_NODES + " nodes are expected");
        }
        FieldGrid grid = FieldGrid.of(box[0], box[1], width, height, step);
        double within = heatedWithin.orElse(length > 0 ? floor.areaSquareMetres() / length / 2 : width);
        boolean[][] floorMask = floor.mask(grid);
        boolean[][] heatedMask = HeatedMask.near(grid, floorMask, cables, within);
        FieldPlanes planes = new FieldPlanes(grid, stack, climate, cables, studFactor(2 * within));
        double air = climate.airKelvin();
        double below = climate.belowKelvin();
        FieldSolution solution = covers.isEmpty()
                ? FieldSolution.open(planes, law, air, below, heatedMask)
                : FieldSolution.covered(planes, law, air, below, heatedMask, CoverMap.resistance(grid, covers));
        return new FloorField(
                grid, floor, List.copyOf(cables), law, within, solution, floorMask, heatedMask, List.copyOf(covers));
    }

    private StudFactor studFactor(double evenSpacing) {
        if (studs.isEmpty()) {
            return StudFactor.none();
        }
        StuddedLayer studded = studs.get();
        cables.forEach(run -> studded.checkFits(buildUp, run.cable()));
        return studded.factor(buildUp, climate, law, cables.get(0).cable(), evenSpacing);
    }
}
