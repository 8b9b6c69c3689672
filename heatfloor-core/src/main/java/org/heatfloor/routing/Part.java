package org.heatfloor.routing;

import java.util.ArrayList;
import java.util.List;

/** One connected part of the floor that a cold lead reaches, with what the search needs to know of it. */
final class Part {

    /** Rounding of a right-angle corner of radius 1 shortens the cable by 2 − π/2. */
    static final double CORNER = 2 - Math.PI / 2;

    final RouteSite site;
    final Frame frame;
    final Lattice lattice;
    final LeadWays leads;
    /** Cold lead available in the floor. */
    final double leadMetres;
    /** Ways by lattice node; null where no lead arrives. */
    final List<List<LeadWays.Way>> waysAt;

    final boolean sleeved;
    /** Area of the union of squares, in pitch². */
    final double area;
    /** Least spacing in pitches, not rounded. */
    final double spacing;

    Part(RouteSite site, Frame frame, Lattice lattice, double area, LeadWays leads, double leadMetres) {
        this.site = site;
        this.frame = frame;
        this.lattice = lattice;
        this.leads = leads;
        this.leadMetres = leadMetres;
        spacing = site.minSpacing / site.pitch;
        this.area = area;
        waysAt = new ArrayList<>();
        for (int v = 0; v < lattice.free.length; v++) {
            waysAt.add(List.of());
        }
        boolean plain = leads.ways().stream().anyMatch(w -> lattice.free[w.node()] && !w.sleeved());
        sleeved = !plain;
        for (LeadWays.Way way : leads.ways()) {
            if (lattice.free[way.node()] && (sleeved || !way.sleeved())) {
                List<LeadWays.Way> here = new ArrayList<>(waysAt.get(way.node()));
                here.add(way);
                waysAt.set(way.node(), List.copyOf(here));
            }
        }
    }

    boolean reached() {
        return waysAt.stream().anyMatch(w -> !w.isEmpty());
    }

    int leastGap() {
        return Math.max(site.spacingPitches(), site.leastRun());
    }

    /** Fewest turns of a route of the given length in pitches: rows and columns of the widened free area. */
    int leastTurns(double length, boolean returns) {
        int k = site.spacingPitches();
        double needed = returns ? k * length : k * (length + k);
        int[] rows = widened(false);
        int[] columns = widened(true);
        double inRows = 0;
        double inColumns = 0;
        for (int z = 1; ; z++) {
            for (int t = (z - 1) * k; t < z * k; t++) {
                inRows += t < rows.length ? rows[t] : 0;
                inColumns += t < columns.length ? columns[t] : 0;
            }
            if (Math.min(inRows, inColumns) >= needed || (z - 1) * k >= Math.max(rows.length, columns.length)) {
                return Math.max(0, returns ? 2 * z : 2 * z - 2);
            }
        }
    }

    /** Lengths of the rows, or columns, of the free area widened by the spacing's squares, longest first. */
    private int[] widened(boolean columns) {
        int k = site.spacingPitches();
        int w = lattice.width + k;
        int h = lattice.height + k;
        boolean[] cells = new boolean[w * h];
        for (int v = 0; v < lattice.free.length; v++) {
            if (lattice.free[v]) {
                for (int dy = 0; dy < k; dy++) {
                    int base = (v / lattice.width + dy) * w + v % lattice.width;
                    for (int dx = 0; dx < k; dx++) {
                        cells[base + dx] = true;
                    }
                }
            }
        }
        int[] sums = new int[columns ? w : h];
        for (int c = 0; c < cells.length; c++) {
            if (cells[c]) {
                sums[columns ? c % w : c / w]++;
            }
        }
        java.util.Arrays.sort(sums);
        for (int i = 0; i < sums.length / 2; i++) {
            int swap = sums[i];
            sums[i] = sums[sums.length - 1 - i];
            sums[sums.length - 1 - i] = swap;
        }
        return sums;
    }

    /** Longest cable that can lie here, in metres; proved. */
    double capacityMetres(boolean returns) {
        double pitches = returns ? area / spacing : area / spacing - spacing;
        if (!(pitches > 0)) {
            return 0;
        }
        double rounding = CORNER * site.bendRadius * leastTurns(pitches * 0.999, returns);
        return Math.max(0, pitches * site.pitch - rounding);
    }

    double evenSpacingMetres(double lengthMetres) {
        return area * site.pitch * site.pitch / lengthMetres;
    }
}
