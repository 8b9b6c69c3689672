package org.heatfloor.area;

import javax.measure.Quantity;
import javax.measure.quantity.Area;
import org.heatfloor.quantity.Amounts;
import org.locationtech.jts.geom.Polygon;

/** A place that keeps every clearance and yet is not worth heating. Coordinates are metres. */
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

    private final String name;
    private final Reason reason;
    private final Polygon shape;

    DeadSpace(String name, Reason reason, Polygon shape) {
        this.name = name;
        this.reason = reason;
        this.shape = shape;
    }

    /**
     * Where it is, by what stands around it.
     *
     * @return for example {@code between pan and wall}
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
     * @return a copy, in metres
     */
    public Polygon shape() {
        return (Polygon) shape.copy();
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
