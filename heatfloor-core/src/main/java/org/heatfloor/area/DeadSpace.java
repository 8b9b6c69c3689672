package org.heatfloor.area;

import javax.measure.Quantity;
import javax.measure.quantity.Area;
import org.heatfloor.quantity.Amounts;
import org.locationtech.jts.geom.Geometry;

/**
 * A place that keeps every clearance and yet is not worth heating: no circle of the needed width comes near it ({@link
 * AreaRules}). Coordinates are metres.
 */
public final class DeadSpace {

    /** Why it is not worth heating. */
    public enum Reason {
        /** No run fits. */
        TOO_NARROW("too narrow to lay a run"),
        /** A gap between fixtures where no one can stand. */
        NO_STANDING_ROOM("no one can stand there");

        private final String words;

        Reason(String words) {
            this.words = words;
        }

        /**
         * The reason in words.
         *
         * @return the words
         */
        public String words() {
            return words;
        }
    }

    /** The name that pieces smaller than a square of the stud pitch share. */
    static final String SMALL_CORNERS = "small corners";

    private final String name;
    private final Reason reason;
    private final Geometry shape;
    private final int joined;

    DeadSpace(String name, Reason reason, Geometry shape, int joined) {
        this.name = name;
        this.reason = reason;
        this.shape = shape;
        this.joined = joined;
    }

    /**
     * Where it is, by what stands around it.
     *
     * @return for example {@code between pan and wall}; {@code small corners} for all pieces smaller than a square of the
     *     stud pitch together
     */
    public String name() {
        return name;
    }

    /**
     * Why it is not worth heating.
     *
     * @return the reason
     */
    public Reason reason() {
        return reason;
    }

    /**
     * Its shape.
     *
     * @return a copy, in metres: a polygon, or several for the small corners
     */
    public Geometry shape() {
        return shape.copy();
    }

    /**
     * How many parts of the heatable region it touches. With two or more it is a neck: it parts the region, though a single
     * run may pass it where a channel happens to lie.
     *
     * @return 0 or more; 0 for the small corners
     */
    public int joinedParts() {
        return joined;
    }

    /**
     * Its area.
     *
     * @return the area
     */
    public Quantity<Area> area() {
        return Amounts.squareMetres(shape.getArea());
    }
}
