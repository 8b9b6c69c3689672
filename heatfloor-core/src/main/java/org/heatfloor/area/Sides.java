package org.heatfloor.area;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.algorithm.LineIntersector;
import org.locationtech.jts.algorithm.RobustLineIntersector;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;

/** The named sides of closed rings, and which two of them meet where they should not. */
final class Sides {

    private record Side(String name, Coordinate from, Coordinate to, int ring, int place) {}

    /**
     * Two sides that meet elsewhere than at their common corner.
     *
     * @param first one side's name
     * @param second the other's
     * @param verb what they do: cross, touch, or fold back onto each other
     * @param at where
     */
    record Meeting(String first, String second, String verb, Coordinate at) {}

    private final List<Side> sides = new ArrayList<>();
    private final List<Integer> counts = new ArrayList<>();

    /** The rings of a polygon: {@code wall 1} begins at the first coordinate; columns are counted from 1. */
    static Sides of(Polygon polygon, String noun, String hole) {
        Sides out = new Sides();
        out.ring(polygon.getExteriorRing().getCoordinates(), noun + " ");
        for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
            out.ring(polygon.getInteriorRingN(i).getCoordinates(), hole + " " + (i + 1) + " side ");
        }
        return out;
    }

    private void ring(Coordinate[] closed, String prefix) {
        List<String> names = new ArrayList<>();
        List<Coordinate> corners = new ArrayList<>();
        for (int i = 0; i + 1 < closed.length; i++) {
            names.add(prefix + (i + 1));
            corners.add(closed[i]);
        }
        ring(corners, names);
    }

    /** A ring by its corners, each with the name of the side that begins there. */
    void ring(List<Coordinate> corners, List<String> names) {
        int place = 0;
        for (int i = 0; i < corners.size(); i++) {
            Coordinate to = corners.get((i + 1) % corners.size());
            if (!corners.get(i).equals2D(to)) {
                sides.add(new Side(names.get(i), corners.get(i), to, counts.size(), place++));
            }
        }
        counts.add(place);
    }

    Optional<Meeting> meeting() {
        LineIntersector lines = new RobustLineIntersector();
        Optional<Meeting> touch = Optional.empty();
        for (int i = 0; i < sides.size(); i++) {
            for (int j = i + 1; j < sides.size(); j++) {
                Side a = sides.get(i);
                Side b = sides.get(j);
                lines.computeIntersection(a.from(), a.to(), b.from(), b.to());
                int allowed = areNeighbours(a, b) ? 1 : 0;
                if (lines.getIntersectionNum() > allowed) {
                    String verb = lines.isProper() ? "cross" : lines.getIntersectionNum() > 1 ? "overlap" : "touch";
                    Meeting found = new Meeting(
                            a.name(), b.name(), verb, lines.getIntersection(0).copy());
                    if (lines.isProper()) {
                        return Optional.of(found);
                    }
                    touch = touch.isPresent() ? touch : Optional.of(found);
                }
            }
        }
        return touch;
    }

    private boolean areNeighbours(Side a, Side b) {
        int apart = b.place() - a.place();
        return a.ring() == b.ring() && (apart == 1 || apart == counts.get(a.ring()) - 1);
    }
}
