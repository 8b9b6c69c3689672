package org.heatfloor.area;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;

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

    /** What is left of a region, and what is not, with the reason. */
    record Found(Geometry heatable, List<DeadSpace> spaces) {}

    /**
     * Dead is what no circle of the run width reaches inside the region, and no circle of the standing width between the
     * fixtures. Both are openings in the sense of mathematical morphology, so a smaller region never leaves more.
     */
    Found find(Geometry region, double runMetres, double standingMetres) {
        List<Piece> pieces = new ArrayList<>();
        Geometry left = region;
        if (runMetres > 0) {
            left = kept(left, Offsets.reached(region, runMetres), DeadSpace.Reason.TOO_NARROW, pieces);
        }
        if (standingMetres > 0) {
            left = kept(
                    left, Offsets.reached(unobstructed(), standingMetres), DeadSpace.Reason.NO_STANDING_ROOM, pieces);
        }
        return new Found(left, named(pieces, left));
    }

    private record Piece(Polygon shape, DeadSpace.Reason reason) {}

    private static Geometry kept(Geometry left, Geometry reached, DeadSpace.Reason reason, List<Piece> lost) {
        if (Offsets.chained(left, reached).isEmpty()) {
            return left;
        }
        Offsets.polygons(Offsets.difference(left, reached)).forEach(shape -> lost.add(new Piece(shape, reason)));
        return Offsets.intersection(left, reached);
    }

    /** Pieces smaller than a square of the pitch, such as the tips of sharp corners, share one name. */
    private List<DeadSpace> named(List<Piece> pieces, Geometry heatable) {
        List<DeadSpace> out = new ArrayList<>();
        List<IndexedFacetDistance> parts = indexed(heatable);
        for (DeadSpace.Reason reason : DeadSpace.Reason.values()) {
            List<Polygon> small = new ArrayList<>();
            for (Piece piece : pieces) {
                if (piece.reason() == reason && piece.shape().getArea() >= pitchMetres * pitchMetres) {
                    out.add(new DeadSpace(name(piece.shape()), reason, piece.shape(), touching(piece.shape(), parts)));
                } else if (piece.reason() == reason) {
                    small.add(piece.shape());
                }
            }
            if (!small.isEmpty()) {
                Geometry shape = floor.getFactory().createMultiPolygon(small.toArray(Polygon[]::new));
                out.add(new DeadSpace(DeadSpace.SMALL_CORNERS, reason, shape, 0));
            }
        }
        return List.copyOf(out);
    }

    static List<Neck> necks(Geometry region, double widthMetres, double leastSquareMetres) {
        Geometry wide = Offsets.swept(region, widthMetres);
        List<IndexedFacetDistance> parts = indexed(wide);
        List<Neck> out = new ArrayList<>();
        for (Polygon rest : Offsets.polygons(Offsets.difference(region, wide))) {
            int joined = touching(rest, parts);
            if (joined >= 2 && rest.getArea() >= leastSquareMetres) {
                out.add(new Neck(rest, joined, widthMetres));
            }
        }
        return List.copyOf(out);
    }

    private static List<IndexedFacetDistance> indexed(Geometry parts) {
        return Offsets.polygons(parts).stream().map(IndexedFacetDistance::new).toList();
    }

    private static int touching(Polygon rest, List<IndexedFacetDistance> parts) {
        return (int) parts.stream()
                .filter(part -> part.isWithinDistance(rest, TOUCHING_METRES))
                .count();
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
