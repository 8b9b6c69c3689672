package org.heatfloor.routing;

import org.heatfloor.grid.StudLattice;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.locationtech.jts.geom.Coordinate;

/** Distance of a drawn line from the centres of the studs. */
final class DrawnStuds {

    /**
     * The stud that comes nearest.
     *
     * @param metres distance of its centre from the line
     * @param bulgeMetres how far the arc may bulge over the chord that comes nearest
     * @param stud its centre
     */
    record Nearest(double metres, double bulgeMetres, Coordinate stud) {}

    private final double pitch;
    private final double originX;
    private final double originY;
    private final double cos;
    private final double sin;

    DrawnStuds(StudLattice lattice) {
        pitch = Si.in("stud pitch", lattice.pitch(), Units.METRE);
        double angle = Si.in("lattice angle", lattice.angle(), Units.RADIAN);
        cos = Math.cos(angle);
        sin = Math.sin(angle);
        originX = lattice.origin().getX();
        originY = lattice.origin().getY();
    }

    /** The nearest stud, where a chord counts as farther off by its bulge. */
    Nearest nearest(DrawnLine line) {
        Search search = new Search(line);
        for (int i = 0; i < line.segments(); i++) {
            search.segment(i);
        }
        return search.best;
    }

    /** One run over the segments of a line; in the lattice's own frame the studs stand at whole numbers. */
    private final class Search {
        private final DrawnLine line;
        private Nearest best = new Nearest(Double.POSITIVE_INFINITY, 0, new Coordinate());

        Search(DrawnLine line) {
            this.line = line;
        }

        void segment(int i) {
            double u0 = column(line.x(i), line.y(i));
            double v0 = row(line.x(i), line.y(i));
            double u1 = column(line.x(i + 1), line.y(i + 1));
            double v1 = row(line.x(i + 1), line.y(i + 1));
            boolean alongColumns = Math.abs(u1 - u0) >= Math.abs(v1 - v0);
            double a0 = alongColumns ? u0 : v0;
            double a1 = alongColumns ? u1 : v1;
            double b0 = alongColumns ? v0 : u0;
            double b1 = alongColumns ? v1 : u1;
            double slope = (b1 - b0) / (a1 - a0);
            long from = (long) Math.floor(Math.min(a0, a1)) - 1;
            long to = (long) Math.ceil(Math.max(a0, a1)) + 1;
            for (long a = from; a <= to; a++) {
                long b = (long) Math.floor(b0 + slope * (a - a0));
                for (long other = b - 1; other <= b + 2; other++) {
                    stud(i, alongColumns ? a : other, alongColumns ? other : a);
                }
            }
        }

        private void stud(int segment, long column, long row) {
            double sx = originX + pitch * (column * cos - row * sin);
            double sy = originY + pitch * (column * sin + row * cos);
            double distance = line.distance(segment, sx, sy);
            if (distance < best.metres + best.bulgeMetres) {
                double bulge = DrawnBends.bulgeMetres(line, segment);
                if (distance + bulge < best.metres + best.bulgeMetres) {
                    best = new Nearest(distance, bulge, new Coordinate(sx, sy));
                }
            }
        }
    }

    private double column(double x, double y) {
        return ((x - originX) * cos + (y - originY) * sin) / pitch;
    }

    private double row(double x, double y) {
        return ((y - originY) * cos - (x - originX) * sin) / pitch;
    }
}
