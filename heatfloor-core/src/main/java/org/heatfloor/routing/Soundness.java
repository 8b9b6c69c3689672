package org.heatfloor.routing;

import java.util.ArrayList;
import java.util.List;
import org.heatfloor.finding.Finding;

/**
 * How much of a laid part breaks no rule of the site as it is now. Every shorter piece of a sound one is sound, so that the
 * longest is found by halving; the independent check judges.
 */
final class Soundness {

    private static final double LEAST_METRES = 0.005;
    private static final int HALVINGS = 8;

    private final WholeCable drawing;
    private final Track track;
    private final double sound;
    private final List<Finding> reasons;

    Soundness(WholeCable drawing, Track track, OpenFloor floor, double laidMetres) {
        this.drawing = drawing;
        this.track = track;
        reasons = laidMetres < LEAST_METRES ? List.of() : errors(laidMetres);
        sound = reasons.isEmpty() ? laidMetres : longestSound(floor, laidMetres);
    }

    /** The longest sound piece from the joint on; negative if the joint itself or the cold lead cannot stay. */
    double soundMetres() {
        return sound;
    }

    /** What the laid part breaks. */
    List<Finding> reasons() {
        return reasons;
    }

    private List<Finding> errors(double metres) {
        return drawing.checkLaid(track, Math.max(LEAST_METRES, metres)).stream()
                .filter(Finding::isError)
                .toList();
    }

    private double longestSound(OpenFloor floor, double laidMetres) {
        List<Double> heads = new ArrayList<>();
        heads.add(LEAST_METRES);
        for (double row : LaidPart.rowEnds(track, floor)) {
            if (row > LEAST_METRES && row < laidMetres) {
                heads.add(row);
            }
        }
        heads.add(laidMetres);
        if (!errors(LEAST_METRES).isEmpty()) {
            return -1;
        }
        int good = 0;
        int bad = heads.size() - 1;
        while (bad - good > 1) {
            int middle = (good + bad) / 2;
            if (errors(heads.get(middle)).isEmpty()) {
                good = middle;
            } else {
                bad = middle;
            }
        }
        double low = heads.get(good);
        double high = heads.get(bad);
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (errors(middle).isEmpty()) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
