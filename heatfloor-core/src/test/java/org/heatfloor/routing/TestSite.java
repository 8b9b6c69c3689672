package org.heatfloor.routing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import org.heatfloor.area.KeepOut;
import org.heatfloor.area.KeepOutKind;
import org.heatfloor.area.Room;
import org.heatfloor.area.TradeLength;
import org.heatfloor.grid.Membrane;
import org.heatfloor.grid.StudLattice;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;

/** An invented rectangular room with a few keep-outs, in millimetres, and the same room mirrored or turned. */
record TestSite(int width, int depth, int pitch, int spacing, int keepOuts, int seed, int turn, boolean mirror) {

    private static final GeometryFactory FACTORY = new GeometryFactory();

    TestSite(int width, int depth, int pitch, int spacing, int keepOuts, int seed) {
        this(width, depth, pitch, spacing, keepOuts, seed, 0, false);
    }

    /** Sites of widths and depths in millimetres, with studs from the least pitch to 40 mm. */
    static Arbitrary<TestSite> between(int leastWidth, int mostWidth, int leastDepth, int mostDepth, int leastPitch) {
        return Combinators.combine(
                        Arbitraries.integers().between(leastWidth, mostWidth),
                        Arbitraries.integers().between(leastDepth, mostDepth),
                        Arbitraries.integers().between(leastPitch, 40),
                        Arbitraries.of(3, 4),
                        Arbitraries.integers().between(0, 3),
                        Arbitraries.integers().between(0, 1000))
                .as(TestSite::new);
    }

    TestSite withoutKeepOuts() {
        return new TestSite(width, depth, pitch, spacing, 0, seed, turn, mirror);
    }

    TestSite mirrored() {
        return new TestSite(width, depth, pitch, spacing, keepOuts, seed, turn, !mirror);
    }

    TestSite turned() {
        return new TestSite(width, depth, pitch, spacing, keepOuts, seed, turn + 1, mirror);
    }

    private AffineTransformation placed() {
        AffineTransformation t = new AffineTransformation();
        if (mirror) {
            t.compose(new AffineTransformation(-1, 0, 0, 0, 1, 0));
        }
        for (int i = 0; i < turn; i++) {
            t.compose(new AffineTransformation(0, -1, 0, 1, 0, 0));
        }
        return t;
    }

    private <G extends Geometry> G placed(G geometry) {
        @SuppressWarnings("unchecked")
        G moved = (G) placed().transform(geometry);
        return moved;
    }

    private static Polygon rectangle(double x0, double y0, double x1, double y1) {
        return FACTORY.createPolygon(new Coordinate[] {
            new Coordinate(x0, y0),
            new Coordinate(x1, y0),
            new Coordinate(x1, y1),
            new Coordinate(x0, y1),
            new Coordinate(x0, y0)
        });
    }

    private Room room() {
        return Room.of(placed(rectangle(0, 0, width, depth)), Units.MILLIMETRE);
    }

    /** A flange, a cabinet in the far corner and a register, as many as asked for. */
    private List<KeepOut> keepOutList() {
        List<KeepOut> out = new ArrayList<>();
        if (keepOuts > 0) {
            out.add(KeepOut.of(
                    "cabinet",
                    KeepOutKind.FIXED_FURNITURE,
                    placed(rectangle(width - 300, depth - 350, width, depth)),
                    Units.MILLIMETRE,
                    TradeLength.studs(1)));
        }
        if (keepOuts > 1) {
            out.add(KeepOut.round(
                    "flange",
                    KeepOutKind.TOILET_FLANGE,
                    placed(FACTORY.createPoint(new Coordinate(width * 0.35 + seed * 0.05, depth - 200.0))),
                    Units.MILLIMETRE,
                    Amounts.millimetres(110),
                    TradeLength.studs(4)));
        }
        if (keepOuts > 2) {
            out.add(KeepOut.of(
                    "register",
                    KeepOutKind.AIR_REGISTER,
                    placed(rectangle(width - 380, 120, width - 180, 200)),
                    Units.MILLIMETRE,
                    TradeLength.studs(2)));
        }
        return out;
    }

    private Membrane membrane() {
        return new Membrane(
                Amounts.millimetres(pitch),
                Amounts.millimetres(pitch * 0.55),
                Amounts.millimetres(9),
                Optional.empty());
    }

    private StudLattice lattice() {
        return StudLattice.of(
                membrane(),
                placed(FACTORY.createPoint(new Coordinate(pitch / 2.0, pitch / 2.0))),
                Units.MILLIMETRE,
                Amounts.degrees(0));
    }

    private Point start() {
        return AffineTransformation.scaleInstance(0.001, 0.001)
                                .transform(placed(FACTORY.createPoint(new Coordinate(0, depth * 0.3 + seed * 0.1))))
                        instanceof Point p
                ? p
                : FACTORY.createPoint();
    }

    RouteSite site() {
        return site(keepOutList());
    }

    /** The same site with one more place without cable. */
    RouteSite siteWith(KeepOut added) {
        List<KeepOut> all = new ArrayList<>(keepOutList());
        all.add(added);
        return site(all);
    }

    private RouteSite site(List<KeepOut> places) {
        return RouteSite.of(
                room(),
                TradeLength.studs(2),
                places,
                lattice(),
                TradeLength.studs(spacing).with(Amounts.millimetres(pitch)),
                Amounts.millimetres(14),
                start(),
                Amounts.metres(1.2),
                Amounts.millimetres(100));
    }

    double capacity() {
        return Si.in("capacity", Router.of(site()).capacity(0), Units.METRE);
    }

    RouteOutcome route(double metres, boolean returns) {
        return Router.of(site())
                .route(
                        0,
                        new CableToLay(
                                "test",
                                returns ? 1 : 2,
                                Amounts.metres(metres),
                                Amounts.millimetres(5),
                                Amounts.metres(4)),
                        Effort.QUICK,
                        7);
    }

    Router router() {
        return Router.of(site());
    }

    RouteCheckReport check(List<CableRoute> routes) {
        return check(routes, List.of());
    }

    RouteCheckReport check(List<CableRoute> routes, List<KeepOut> added) {
        return routeCheck(added)
                .check(routes.stream()
                        .map(r -> new LaidCable(
                                r.cable().name(),
                                r.line(),
                                r.coldLeads(),
                                r.cable().length(),
                                r.cable().diameter(),
                                r.cable().conductors(),
                                r.cable().coldLead()))
                        .toList());
    }

    /** The independent check of the site with more places without cable. */
    RouteCheck routeCheck(List<KeepOut> added) {
        List<KeepOut> all = new ArrayList<>(keepOutList());
        all.addAll(added);
        return RouteCheck.builder(room(), lattice())
                .wallClearance(TradeLength.studs(2).with(Amounts.millimetres(pitch)))
                .keepOuts(all)
                .minSpacing(TradeLength.studs(spacing).with(Amounts.millimetres(pitch)))
                .minBendRadius(Amounts.millimetres(14))
                .start(start(), Units.METRE)
                .riser(Amounts.metres(1.2))
                .jointLength(Amounts.millimetres(100))
                .build();
    }
}
