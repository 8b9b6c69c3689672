package org.heatfloor.routing;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** One connected part of the floor that a cold lead reaches, with what the search needs to know of it. */
final class Part {

    /** Rounding of a right-angle corner of radius 1 shortens the cable by 2 − π/2. */
    static final double CORNER = 2 - Math.PI / 2;

    /** Greatest distance from the wall at which the leads of a single cable are drawn. */
    static final double TRACK_METRES = 0.006;

    final RouteSite site;
    final Frame frame;
    final Lattice lattice;
    final LeadWays leads;
    /** Cold lead available in the floor. */
    final double leadMetres;
    /** Ways by lattice node; null where no lead arrives. */
    final List<List<LeadWays.Way>> waysAt;

    /** Lattice nodes at which a lead arrives. */
    final boolean[] starts;

    final boolean sleeved;
    /** Area of the union of squares, in pitch². */
    final double area;
    /** Least spacing in pitches, not rounded. */
    final double spacing;

    /** Greatest distance of a lead along the wall from it. */
    final double trackMetres;

    /** Spacings wanted from place to place; null where the same is wanted everywhere. */
    final @Nullable Wanted wanted;

    Part(RouteSite site, Frame frame, Lattice lattice, double area, LeadWays leads, double leadMetres) {
        this(site, frame, lattice, area, leads, leadMetres, TRACK_METRES, null);
    }

    Part(
            RouteSite site,
            Frame frame,
            Lattice lattice,
            double area,
            LeadWays leads,
            double leadMetres,
            double trackMetres,
            @Nullable Wanted wanted) {
        this.trackMetres = trackMetres;
        this.wanted = wanted;
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
        starts = nonEmpty(waysAt);
    }

    /** The same part with the same spacing wanted everywhere. */
    Part even() {
        return new Part(site, frame, lattice, area, leads, leadMetres, trackMetres, null);
    }

    private static boolean[] nonEmpty(List<List<LeadWays.Way>> ways) {
        boolean[] out = new boolean[ways.size()];
        for (int v = 0; v < out.length; v++) {
            out[v] = !ways.get(v).isEmpty();
        }
        return out;
    }

    boolean reached() {
        return waysAt.stream().anyMatch(w -> !w.isEmpty());
    }

    int leastGap() {
        return Math.max(site.spacingPitches(), site.leastRun());
    }

    double capacityMetres() {
        return Capacity.metres(site, lattice, area);
    }

    double evenSpacingMetres(double lengthMetres) {
        return area * site.pitch * site.pitch / lengthMetres;
    }
}
