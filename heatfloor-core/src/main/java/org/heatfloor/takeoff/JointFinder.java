package org.heatfloor.takeoff;

import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.linemerge.LineMerger;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** The lines along which two pieces meet. */
final class JointFinder {

    private JointFinder() {}

    static void add(List<LineString> joints, Polygon a, Polygon b) {
        Geometry shared = OverlayNGRobust.overlay(a.getBoundary(), b.getBoundary(), OverlayNG.INTERSECTION);
        LineMerger merger = new LineMerger();
        merger.add(shared);
        for (Object line : merger.getMergedLineStrings()) {
            if (line instanceof LineString joint) {
                joints.add(joint);
            }
        }
    }
}
