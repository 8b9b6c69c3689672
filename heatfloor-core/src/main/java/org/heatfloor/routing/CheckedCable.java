package org.heatfloor.routing;

import java.util.ArrayList;
import java.util.List;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;

/** A laid cable read into numbers once, for all the measuring that follows. */
final class CheckedCable {

    final LaidCable cable;
    final LineString geometry;
    final IndexedFacetDistance facets;
    final DrawnLine heating;
    final List<LineString> leadGeometries;
    final List<DrawnLine> leads = new ArrayList<>();
    final double diameterMetres;
    final double lengthMetres;
    final double coldLeadMetres;

    CheckedCable(LaidCable cable) {
        this.cable = cable;
        geometry = cable.heatingLine();
        facets = new IndexedFacetDistance(geometry);
        heating = DrawnLine.of(geometry);
        leadGeometries = cable.coldLeads();
        for (LineString lead : leadGeometries) {
            leads.add(DrawnLine.of(lead));
        }
        diameterMetres = Si.in("cable diameter", cable.diameter(), Units.METRE);
        lengthMetres = Si.in("cable length", cable.cableLength(), Units.METRE);
        coldLeadMetres = Si.in("cold lead length", cable.coldLeadLength(), Units.METRE);
    }
}
