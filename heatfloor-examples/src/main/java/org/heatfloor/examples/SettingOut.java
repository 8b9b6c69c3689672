package org.heatfloor.examples;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.heatfloor.quantity.Units;
import org.heatfloor.takeoff.TileLayout;
import org.heatfloor.takeoff.TilePiece;
import org.locationtech.jts.geom.Envelope;

/**
 * The joints a fitter sets a tile layout out from, for tiles along the sheet's axes: every joint between rows, the joints of
 * the longest row, and of each the one nearest the middle.
 */
final class SettingOut {

    private static final double AXIS = 1e-6;

    private final List<Double> across;
    private final List<Double> up;
    private final Envelope room;
    private final Envelope row;

    private SettingOut(List<Double> across, List<Double> up, Envelope room, Envelope row) {
        this.across = across;
        this.up = up;
        this.room = room;
        this.row = row;
    }

    /** Whether the tiles lie along the sheet's axes. */
    static boolean isStraight(TileLayout layout) {
        return Math.min(Math.abs(Math.sin(radians(layout))), Math.abs(Math.cos(radians(layout)))) < AXIS;
    }

    private static double radians(TileLayout layout) {
        return layout.direction().to(Units.RADIAN).getValue().doubleValue();
    }

    /** The joints; empty where the tiles lie slantwise or there is no joint either way. */
    static Optional<SettingOut> of(TileLayout layout, Envelope room) {
        boolean isAlongX = Math.abs(Math.sin(radians(layout))) < AXIS;
        if (!isStraight(layout)) {
            return Optional.empty();
        }
        Map<Integer, List<Envelope>> rows = layout.pieces().stream()
                .collect(Collectors.groupingBy(
                        TilePiece::row,
                        TreeMap::new,
                        Collectors.mapping(p -> p.shape().getEnvelopeInternal(), Collectors.toList())));
        List<Envelope> longest =
                rows.values().stream().max(Comparator.comparingInt(List::size)).orElse(List.of());
        Envelope row = new Envelope();
        longest.forEach(row::expandToInclude);
        List<Envelope> whole = new ArrayList<>();
        for (List<Envelope> one : rows.values()) {
            Envelope extent = new Envelope();
            one.forEach(extent::expandToInclude);
            whole.add(extent);
        }
        List<Double> across = joints(isAlongX ? longest : whole, true);
        List<Double> up = joints(isAlongX ? whole : longest, false);
        return across.isEmpty() || up.isEmpty() ? Optional.empty() : Optional.of(new SettingOut(across, up, room, row));
    }

    /** The middles of the gaps between neighbours. */
    private static List<Double> joints(List<Envelope> pieces, boolean alongX) {
        List<Envelope> sorted = pieces.stream()
                .sorted(Comparator.comparingDouble(e -> alongX ? e.getMinX() : e.getMinY()))
                .toList();
        List<Double> joints = new ArrayList<>();
        for (int i = 1; i < sorted.size(); i++) {
            double before =
                    alongX ? sorted.get(i - 1).getMaxX() : sorted.get(i - 1).getMaxY();
            double after = alongX ? sorted.get(i).getMinX() : sorted.get(i).getMinY();
            if (after > before - 1e-9) {
                joints.add((before + after) / 2);
            }
        }
        return joints;
    }

    /** Wall, first joint, setting-out line, last joint, wall. */
    List<Double> stopsAcross() {
        return stops(across, room.getMinX(), room.getMaxX());
    }

    List<Double> stopsUp() {
        return stops(up, room.getMinY(), room.getMaxY());
    }

    private static List<Double> stops(List<Double> joints, double from, double to) {
        List<Double> stops = new ArrayList<>();
        for (double stop :
                new double[] {from, joints.get(0), middle(joints, from, to), joints.get(joints.size() - 1), to}) {
            if (stops.isEmpty() || stop > stops.get(stops.size() - 1) + 1e-6) {
                stops.add(stop);
            }
        }
        return stops;
    }

    private static double middle(List<Double> joints, double from, double to) {
        return joints.stream()
                .min(Comparator.comparingDouble(j -> Math.abs(j - (from + to) / 2)))
                .orElseThrow();
    }

    double lineAcross() {
        return middle(across, room.getMinX(), room.getMaxX());
    }

    double lineUp() {
        return middle(up, room.getMinY(), room.getMaxY());
    }

    /** The row whose joints are measured. */
    Envelope row() {
        return new Envelope(row);
    }
}
