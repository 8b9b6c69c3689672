package org.heatfloor.area;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;

/** Room outlines in metres for the laws: valid by construction, the same for the same seed. */
public final class RandomRooms {

    /** The families of outlines. */
    public enum Shape {
        /** Four walls. */
        RECTANGLE,
        /** An L. */
        ELL,
        /** A U. */
        YOU,
        /** A T. */
        TEE,
        /** Many oblique walls, convex and reflex corners. */
        STAR,
        /** A rectangle with columns. */
        HOLES,
        /** Slivers, tiny steps and near-parallel walls. */
        NEAR_DEGENERATE
    }

    private static final GeometryFactory FACTORY = new GeometryFactory();

    private RandomRooms() {}

    /**
     * An outline.
     *
     * @param shape the family
     * @param seed decides everything else
     * @return a valid polygon, in metres
     */
    public static Polygon outline(Shape shape, long seed) {
        Random random = new Random(seed * 31 + shape.name().hashCode());
        double a = 1 + 4 * random.nextDouble();
        double b = 1 + 3 * random.nextDouble();
        double c = 0.2 + 0.6 * random.nextDouble();
        double d = 0.2 + 0.6 * random.nextDouble();
        Polygon plain =
                switch (shape) {
                    case RECTANGLE -> ring(0, 0, a, 0, a, b, 0, b);
                    case ELL -> ring(0, 0, a, 0, a, b * d, a * c, b * d, a * c, b, 0, b);
                    case YOU ->
                        ring(
                                0,
                                0,
                                a,
                                0,
                                a,
                                b,
                                a * (1 - c / 3),
                                b,
                                a * (1 - c / 3),
                                b * d,
                                a * c / 3,
                                b * d,
                                a * c / 3,
                                b,
                                0,
                                b);
                    case TEE ->
                        ring(
                                0,
                                b * d,
                                a * c / 2,
                                b * d,
                                a * c / 2,
                                0,
                                a * (1 - c / 3),
                                0,
                                a * (1 - c / 3),
                                b * d,
                                a,
                                b * d,
                                a,
                                b,
                                0,
                                b);
                    case STAR -> star(random);
                    case HOLES -> holes(a, b, random);
                    case NEAR_DEGENERATE -> nearDegenerate(a, b, random);
                };
        Polygon turned = (Polygon)
                AffineTransformation.rotationInstance(random.nextInt(3) == 0 ? 0 : random.nextDouble() * 2 * Math.PI)
                        .transform(plain);
        if (!turned.isValid()) {
            throw new IllegalStateException(shape + " " + seed + " is not valid");
        }
        return turned;
    }

    /**
     * A point drawn in the outline's bounding box.
     *
     * @param outline the outline
     * @param random the source of chance
     * @return a place
     */
    public static Coordinate place(Polygon outline, Random random) {
        var box = outline.getEnvelopeInternal();
        return new Coordinate(
                box.getMinX() + random.nextDouble() * box.getWidth(),
                box.getMinY() + random.nextDouble() * box.getHeight());
    }

    private static Polygon star(Random random) {
        int corners = 3 + random.nextInt(14);
        List<Coordinate> out = new ArrayList<>();
        for (int i = 0; i < corners; i++) {
            double angle = 2 * Math.PI * (i + 0.8 * random.nextDouble()) / corners;
            double radius = 0.6 + 2.4 * random.nextDouble();
            out.add(new Coordinate(radius * Math.cos(angle), radius * Math.sin(angle)));
        }
        out.add(out.get(0).copy());
        return FACTORY.createPolygon(out.toArray(Coordinate[]::new));
    }

    private static Polygon holes(double a, double b, Random random) {
        int count = 1 + random.nextInt(3);
        LinearRing[] holes = new LinearRing[count];
        for (int i = 0; i < count; i++) {
            double x = a * (i + 0.3 + 0.2 * random.nextDouble()) / count;
            double y = b * (0.2 + 0.4 * random.nextDouble());
            double size = Math.min(a / count, b) * (0.05 + 0.15 * random.nextDouble());
            int corners = 3 + random.nextInt(20);
            Coordinate[] ring = new Coordinate[corners + 1];
            for (int k = 0; k < corners; k++) {
                double angle = 2 * Math.PI * k / corners;
                ring[k] = new Coordinate(x + size * Math.cos(angle), y + size * Math.sin(angle));
            }
            ring[corners] = ring[0].copy();
            holes[i] = FACTORY.createLinearRing(ring);
        }
        return FACTORY.createPolygon(ring(0, 0, a, 0, a, b, 0, b).getExteriorRing(), holes);
    }

    private static Polygon nearDegenerate(double a, double b, Random random) {
        double tiny = Math.pow(10, -6 + 4 * random.nextDouble());
        return switch (random.nextInt(4)) {
            case 0 -> ring(0, 0, a, 0, a, b, a / 2 + tiny, b, a / 2, b - tiny, 0, b);
            case 1 -> ring(0, 0, a, 0, a + tiny, b / 2, a, b, 0, b);
            case 2 -> ring(0, 0, a, 0, a, b, a / 2 + tiny, b, a / 2 + tiny / 2, b / 3, a / 2, b, 0, b);
            default -> ring(0, 0, a / 2, tiny, a, 0, a, b, a / 2, b - tiny / 3, 0, b);
        };
    }

    private static Polygon ring(double... places) {
        Coordinate[] out = new Coordinate[places.length / 2 + 1];
        for (int i = 0; i < out.length - 1; i++) {
            out[i] = new Coordinate(places[2 * i], places[2 * i + 1]);
        }
        out[out.length - 1] = out[0].copy();
        return FACTORY.createPolygon(out);
    }
}
