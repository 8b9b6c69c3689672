package org.heatfloor.takeoff;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.heatfloor.area.Room;
import org.heatfloor.takeoff.LevelPacker.Packing;
import org.heatfloor.takeoff.LevelPacker.Slot;
import org.heatfloor.takeoff.StripCutter.Piece;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;

/** The worked checks of membrane strips: how many a floor takes and how they are cut from rolls. */
final class WorkedStrips {

    private WorkedStrips() {}

    /** Strips along x from the lower wall: outline, roll width, roll length, pitch. */
    static double laid(String quantity, Room room, double[] x) {
        double pitch = x[3];
        Polygon cells = (Polygon)
                AffineTransformation.scaleInstance(1 / pitch, 1 / pitch).transform(room.polygon());
        List<Piece> strips = StripCutter.strips(List.of(cells), (int) Math.rint(x[1] / pitch), 0);
        return switch (quantity) {
            case "membrane strips" -> strips.size();
            case "membrane strip metres" ->
                strips.stream().mapToInt(Piece::length).sum() * pitch;
            case "membrane narrowest strip m" ->
                strips.stream().mapToInt(Piece::width).min().orElseThrow() * pitch;
            default -> throw new IllegalArgumentException(quantity);
        };
    }

    /** The roll's length, then the strips' lengths or what the check needs. */
    static double value(String quantity, int[] x) {
        int[] lengths = Arrays.copyOfRange(x, 1, x.length);
        return switch (quantity) {
            case "strips first fit" -> CuttingOracles.firstFitDecreasing(lengths, x[0]);
            case "strips first fit emptiest" ->
                CuttingOracles.firstFitLoads(lengths, x[0]).stream()
                        .mapToInt(i -> i)
                        .min()
                        .orElseThrow();
            case "strips optimum" -> pack(lengths, x[0]).stocks();
            case "strips optimum emptiest" ->
                Arrays.stream(loads(lengths, x[0])).min().orElseThrow();
            case "strips optimum fullest" ->
                Arrays.stream(loads(lengths, x[0])).max().orElseThrow();
            case "strips length bound" -> Math.ceil(Arrays.stream(lengths).sum() / (double) x[0]);
            case "strips bound" -> LevelPacker.lengthBound(lengths, x[0]);
            case "strips on one roll" -> onOneRoll(x[0], x[1]);
            case "rolls no rip" -> pack(repeated(x[1], x[2]), x[0]).stocks();
            case "rolls no rip length" ->
                Arrays.stream(loads(repeated(x[1], x[2]), x[0])).sum();
            case "rolls with rip" -> ripped(x).stocks();
            case "rolls with rip length" -> used(ripped(x), rippedLengths(x));
            case "rolls with rip bound" -> ripped(x).bound();
            default -> throw new IllegalArgumentException(quantity);
        };
    }

    private static int onOneRoll(int roll, int length) {
        int count = 0;
        while (pack(repeated(length, count + 1), roll).stocks() == 1) {
            count++;
        }
        return count;
    }

    private static int[] repeated(int length, int times) {
        int[] lengths = new int[times];
        Arrays.fill(lengths, length);
        return lengths;
    }

    private static Packing pack(int[] lengths, int roll) {
        return LevelPacker.pack(lengths, repeated(1, lengths.length), roll, 1, new Work(1_000_000_000));
    }

    private static int[] loads(int[] lengths, int roll) {
        Packing packing = pack(lengths, roll);
        int[] loads = new int[packing.stocks()];
        for (int i = 0; i < lengths.length; i++) {
            loads[packing.slots().get(i).stock()] += lengths[i];
        }
        return loads;
    }

    /** Full and narrow strips by turns: roll length, roll width, strip length, rooms, narrow width. */
    private static Packing ripped(int[] x) {
        List<Integer> widths = new ArrayList<>();
        for (int i = 0; i < x[3]; i++) {
            widths.add(x[1]);
            widths.add(x[4]);
        }
        return LevelPacker.pack(
                rippedLengths(x), widths.stream().mapToInt(i -> i).toArray(), x[0], x[1], new Work(1_000_000_000));
    }

    private static int[] rippedLengths(int[] x) {
        return repeated(x[2], 2 * x[3]);
    }

    private static double used(Packing packing, int[] lengths) {
        Map<List<Integer>, Integer> shelves = new HashMap<>();
        for (int i = 0; i < lengths.length; i++) {
            Slot slot = packing.slots().get(i);
            shelves.merge(List.of(slot.stock(), slot.along()), lengths[i], Math::max);
        }
        return shelves.values().stream().mapToInt(i -> i).sum();
    }
}
