package org.heatfloor.area;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;

/** Finds dead space and necks in a region. */
final class DeadSpaces {

    /** Parts this near touch. */
    private static final double TOUCHING_METRES = 1e-5;

    private final Polygon floor;
    private final double wallClearanceMetres;
    private final List<KeepOut> keepOuts;
    private final double pitchMetres;

    DeadSpaces(Polygon floor, double wallClearanceMetres, List<KeepOut> keepOuts, double pitchMetres) {
        this.floor = floor;
        this.wallClearanceMetres = wallClearanceMetres;
        this.keepOuts = keepOuts;
        this.pitchMetres = pitchMetres;
    }

    List<DeadSpace> find(Geometry region, double runMetres, double standingMetres) {
        List<DeadSpace> out = new ArrayList<>();
        Geometry wide = runMetres > 0 ? Offsets.swept(region, runMetres) : region;
        Geometry left = region;
        for (Polygon rest : runMetres > 0 ? Offsets.polygons(Offsets.difference(region, wide)) : List.<Polygon>of()) {
            if (rest.getArea() >= smallest() && touching(rest, wide) < 2) {
                out.add(new DeadSpace(name(rest), DeadSpace.Reason.TOO_NARROW, rest));
                left = Offsets.difference(left, rest);
            }
        }
        if (standingMetres > 0) {
            Geometry standing = Offsets.swept(unobstructed(), standingMetres);
            for (Polygon rest : Offsets.polygons(Offsets.difference(left, standing))) {
                if (rest.getArea() >= smallest() && touching(rest, standing) < 2) {
                    out.add(new DeadSpace(name(rest), DeadSpace.Reason.NO_STANDING_ROOM, rest));
                }
            }
        }
        return List.copyOf(out);
    }

    static List<Neck> necks(Geometry region, double widthMetres, double leastSquareMetres) {
        Geometry wide = Offsets.swept(region, widthMetres);
        List<Neck> out = new ArrayList<>();
        for (Polygon rest : Offsets.polygons(Offsets.difference(region, wide))) {
            int joined = touching(rest, wide);
            if (joined >= 2 && rest.getArea() >= leastSquareMetres) {
                out.add(new Neck(rest, joined, widthMetres));
            }
        }
        return List.copyOf(out);
    }

    /** Corners and numerical dust smaller than a square of the pitch are no space worth naming. */
    private double smallest() {
        return pitchMetres * pitchMetres;
    }

    private static int touching(Polygon rest, Geometry wide) {
        int count = 0;
        for (Polygon part : Offsets.polygons(wide)) {
            if (part.distance(rest) <= TOUCHING_METRES) {
                count++;
            }
        }
        return count;
    }

    private Geometry unobstructed() {
        Geometry free = floor;
        for (KeepOut keepOut : keepOuts) {
            if (keepOut.blocksCable() && standsInTheWay(keepOut.kind())) {
                Geometry shape = keepOut.shape();
                free = Offsets.chained(
                        free, shape instanceof Point ? Offsets.grown(shape, keepOut.radiusMetres()) : shape);
            }
        }
        return free;
    }

    private static boolean standsInTheWay(KeepOutKind kind) {
        return switch (kind) {
            case FIXED_FURNITURE, FURNITURE_ON_LEGS, BATH, COLUMN, TOILET_FLANGE, OTHER -> true;
            case SHOWER_TRAY, AIR_REGISTER, DRAIN, THRESHOLD, MOVEMENT_JOINT -> false;
        };
    }

    /** By what stands around it, the nearest first. */
    private String name(Polygon rest) {
        record Near(String name, double metres) {}
        List<Near> near = new ArrayList<>();
        for (KeepOut keepOut : keepOuts) {
            double beyond = keepOut.distanceMetres(rest) - keepOut.clearanceMetres(pitchMetres);
            if (keepOut.blocksCable() && beyond <= pitchMetres / 2) {
                near.add(new Near(keepOut.name(), beyond));
            }
        }
        double beyond = floor.getBoundary().distance(rest) - wallClearanceMetres;
        if (beyond <= pitchMetres / 2) {
            near.add(new Near("wall", beyond));
        }
        near.sort(Comparator.comparingDouble(Near::metres).thenComparing(Near::name));
        List<String> names = near.stream().map(Near::name).toList();
        if (names.size() == 1) {
            return "beside " + names.get(0);
        }
        return names.isEmpty() ? "in the open floor" : "between " + String.join(" and ", names);
    }
}
