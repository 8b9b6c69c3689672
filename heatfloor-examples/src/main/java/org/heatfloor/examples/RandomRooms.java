package org.heatfloor.examples;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/**
 * Invented rooms for measuring the router: nine kinds of floor, each with a stud lattice and a start on a wall from which
 * the floor can be reached. A room depends on the seed and its number alone, never on how many are asked for.
 */
final class RandomRooms {

    /** The seed of every published measurement. */
    static final long SEED = 20_261_125L;

    private static final String[] KINDS = {
        "rectangle", "L", "U", "T", "niche", "round flange", "columns", "corridor", "oblique walls"
    };
    private static final GeometryFactory FACTORY = new GeometryFactory();
    private static final double JOINT_MM = 100;
    private static final double LEAST_OPEN_SQUARE_MM = 700_000;
    private static final int ATTEMPTS = 500;

    private final SplittableRandom random;
    private double pitch;
    private double clearance;
    private int spacing;
    private double bend;

    private RandomRooms(SplittableRandom random) {
        this.random = random;
    }

    /** The room with a number, from 0. */
    static RandomRoom room(long seed, int number) {
        SplittableRandom random = new SplittableRandom(seed * 1_000_003L + number);
        for (int attempt = 0; attempt < ATTEMPTS; attempt++) {
            RandomRoom room = new RandomRooms(random).draw(number);
            if (room != null) {
                return room;
            }
        }
        throw new IllegalStateException("room " + number + ": no usable room in " + ATTEMPTS + " attempts");
    }

    private RandomRoom draw(int number) {
        String kind = KINDS[number % KINDS.length];
        pitch = 25 + random.nextInt(16);
        spacing = 3 + random.nextInt(2);
        clearance = 2 * pitch;
        double diameter = 4 + 0.5 * random.nextInt(5);
        double stud = Math.floor(pitch * (0.54 + 0.1 * random.nextDouble()));
        double largest = (pitch / Math.sqrt(2) - (stud + diameter) / 2) / (Math.sqrt(2) - 1);
        bend = Math.floor(2 * largest * (0.65 + 0.35 * random.nextDouble())) / 2;
        if (!(bend > diameter) || !(pitch - stud > diameter)) {
            return null;
        }
        Polygon floor = floor(kind);
        List<RandomRoom.Obstacle> obstacles = obstacles(kind, floor);
        Point start = start(floor, open(floor, obstacles));
        if (start == null) {
            return null;
        }
        return new RandomRoom(
                kind,
                String.format(Locale.ROOT, "%s %d, %d studs of %.0f mm", kind, number, spacing, pitch),
                floor,
                obstacles,
                pitch,
                stud,
                FACTORY.createPoint(new Coordinate(random.nextInt((int) pitch), random.nextInt((int) pitch))),
                spacing,
                bend,
                diameter,
                start);
    }

    private Polygon floor(String kind) {
        double w = tens(1400, 3400);
        double h = tens(1400, 3000);
        return switch (kind) {
            case "L" -> {
                double x = tens(0.35 * w, 0.65 * w);
                double y = tens(0.35 * h, 0.65 * h);
                yield polygon(0, 0, w, 0, w, y, x, y, x, h, 0, h);
            }
            case "U" -> {
                double width = w + 900;
                double x = tens(0.3 * width, 0.4 * width);
                double x2 = tens(0.6 * width, 0.7 * width);
                double y = tens(0.45 * h, 0.6 * h);
                yield polygon(0, 0, width, 0, width, h, x2, h, x2, y, x, y, x, h, 0, h);
            }
            case "T" -> {
                double width = w + 600;
                double x = tens(0.25 * width, 0.35 * width);
                double x2 = tens(0.65 * width, 0.75 * width);
                double y = tens(0.4 * h, 0.55 * h);
                yield polygon(x, 0, x2, 0, x2, y, width, y, width, h, 0, h, 0, y, x, y);
            }
            case "niche" -> {
                double x = tens(0.2 * w, 0.4 * w);
                double x2 = x + tens(500, 900);
                double deep = tens(250, 600);
                yield x2 < w - 100
                        ? polygon(0, 0, w, 0, w, h, x2, h, x2, h + deep, x, h + deep, x, h, 0, h)
                        : polygon(0, 0, w, 0, w, h + deep, x, h + deep, x, h, 0, h);
            }
            case "columns" -> columns(w + 400, h + 400);
            case "corridor" -> {
                double width = tens(800, 1200);
                double length = tens(2600, 5600);
                yield random.nextBoolean()
                        ? polygon(0, 0, length, 0, length, width, 0, width)
                        : polygon(0, 0, width, 0, width, length, 0, length);
            }
            case "oblique walls" -> {
                double cut = tens(200, 900);
                double lean = tens(100, 700);
                yield polygon(0, 0, w, 0, w + lean, 0.6 * h, w + lean / 2, h, cut, h, 0, h - cut);
            }
            default -> polygon(0, 0, w, 0, w, h, 0, h);
        };
    }

    private Polygon columns(double w, double h) {
        List<LinearRing> holes = new ArrayList<>();
        int count = 1 + random.nextInt(2);
        for (int i = 0; i < count; i++) {
            double side = tens(150, 400);
            double share = (i + 0.5) / count;
            double x = Math.rint(w * share - side / 2);
            double y = tens(0.3 * h, 0.7 * h) - Math.rint(side / 2);
            holes.add(
                    polygon(x, y, x + side, y, x + side, y + side, x, y + side).getExteriorRing());
        }
        return FACTORY.createPolygon(
                polygon(0, 0, w, 0, w, h, 0, h).getExteriorRing(), holes.toArray(new LinearRing[0]));
    }

    private List<RandomRoom.Obstacle> obstacles(String kind, Polygon floor) {
        List<RandomRoom.Obstacle> obstacles = new ArrayList<>();
        int flanges = kind.equals("round flange") ? 1 + random.nextInt(2) : random.nextInt(6) == 0 ? 1 : 0;
        for (int i = 0; i < flanges; i++) {
            Point centre = FACTORY.createPoint(inside(floor));
            if (floor.getBoundary().distance(centre) > 150) {
                obstacles.add(new RandomRoom.Obstacle("flange " + (i + 1), "toilet-flange", centre, 110, "7 studs"));
            }
        }
        if (random.nextInt(5) < 2 && !kind.equals("corridor")) {
            double w = tens(400, 1000);
            double d = tens(300, 600);
            obstacles.add(
                    new RandomRoom.Obstacle("cabinet", "fixed-furniture", polygon(0, 0, w, 0, w, d, 0, d), 0, "30 mm"));
        }
        if (random.nextInt(5) < 2) {
            Coordinate at = inside(floor);
            Polygon vent = polygon(at.x, at.y, at.x + 250, at.y, at.x + 250, at.y + 100, at.x, at.y + 100);
            obstacles.add(new RandomRoom.Obstacle("register", "air-register", vent, 0, "4 studs"));
        }
        obstacles.removeIf(obstacle -> !floor.intersects(obstacle.shape()));
        return obstacles;
    }

    private Coordinate inside(Polygon floor) {
        for (int i = 0; i < ATTEMPTS; i++) {
            Coordinate c = new Coordinate(
                    tens(0, floor.getEnvelopeInternal().getMaxX()),
                    tens(0, floor.getEnvelopeInternal().getMaxY()));
            if (floor.contains(FACTORY.createPoint(c))) {
                return c;
            }
        }
        return floor.getInteriorPoint().getCoordinate();
    }

    /** The widest stretch of floor in which two runs fit side by side. */
    private Geometry open(Polygon floor, List<RandomRoom.Obstacle> obstacles) {
        Geometry free = floor.buffer(-clearance);
        for (RandomRoom.Obstacle obstacle : obstacles) {
            double off = obstacle.clearanceMillimetres(pitch) + obstacle.diameter() / 2;
            free = OverlayNGRobust.overlay(free, obstacle.shape().buffer(off), OverlayNG.DIFFERENCE);
        }
        double half = spacing * pitch / 2 + pitch / 2;
        Geometry wide = free.buffer(-half).buffer(half);
        Geometry largest = FACTORY.createPolygon();
        for (int i = 0; i < wide.getNumGeometries(); i++) {
            if (wide.getGeometryN(i).getArea() > largest.getArea()) {
                largest = wide.getGeometryN(i);
            }
        }
        return largest;
    }

    /** A place on a wall with open floor before it, as deep as the joint and a bend need; null when there is none. */
    private Point start(Polygon floor, Geometry open) {
        if (!(open.getArea() >= LEAST_OPEN_SQUARE_MM)) {
            return null;
        }
        Coordinate[] ring = floor.getExteriorRing().getCoordinates();
        double side = org.locationtech.jts.algorithm.Orientation.isCCW(ring) ? 1 : -1;
        double depth = clearance + JOINT_MM + bend + pitch;
        for (int i = 0; i < ATTEMPTS; i++) {
            int wall = random.nextInt(ring.length - 1);
            LineSegment face = new LineSegment(ring[wall], ring[wall + 1]);
            boolean straight = ring[wall].x == ring[wall + 1].x || ring[wall].y == ring[wall + 1].y;
            double share = 0.1 + 0.8 * random.nextDouble();
            Coordinate at = face.pointAlong(share);
            at = new Coordinate(Math.rint(at.x), Math.rint(at.y));
            Coordinate before = face.pointAlongOffset(face.projectionFactor(at), side * depth);
            if (straight && face.getLength() > 400 && open.contains(FACTORY.createPoint(before))) {
                return FACTORY.createPoint(at);
            }
        }
        return null;
    }

    /** A whole number of centimetres, in millimetres. */
    private double tens(double least, double most) {
        return 10 * Math.rint((least + (most - least) * random.nextDouble()) / 10);
    }

    private static Polygon polygon(double... corners) {
        List<Coordinate> points = new ArrayList<>();
        for (int i = 0; i < corners.length; i += 2) {
            points.add(new Coordinate(Math.rint(corners[i]), Math.rint(corners[i + 1])));
        }
        points.add(points.get(0).copy());
        return FACTORY.createPolygon(points.toArray(new Coordinate[0]));
    }
}
