package org.heatfloor.routing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.heatfloor.area.PriorityZone;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;

/** What weights come to, by hand, and how much of it is got. */
class PriorityZonesTest {

    private static final TestSite PLAIN = new TestSite(1200, 1400, 28, 3, 0, 0);

    static Polygon rectangle(double x0, double y0, double x1, double y1) {
        return (Polygon) new GeometryFactory().toGeometry(new Envelope(x0, x1, y0, y1));
    }

    static PriorityZone zone(double x0, double y0, double x1, double y1, double weight) {
        return PriorityZone.of("zone", rectangle(x0, y0, x1, y1), Units.MILLIMETRE, weight);
    }

    static CableToLay cable(double metres, boolean returns) {
        return new CableToLay(
                "test", returns ? 1 : 2, Amounts.metres(metres), Amounts.millimetres(5), Amounts.metres(4));
    }

    static PriorityZones wish(double greatestMillimetres, PriorityZone... zones) {
        return new PriorityZones(List.of(zones), Amounts.millimetres(greatestMillimetres));
    }

    /** 12 m are 428.57 pitches on 2009 pitches²; the zone has 20 · 41 = 820 of them, the rest 1189. */
    @Test
    void weightsByHand() {
        double[] areas = {1189, 820};
        double[] weights = {1, 2};
        double length = 12 / 0.028;

        double zone = (820 + 1189 / 2.0) / length;
        assertThat(zone).isEqualTo(3.30, within(0.005));
        assertThat(Wanted.spacings(areas, weights, length, 3, 12))
                .containsExactly(new double[] {2 * zone, zone}, within(1e-5));
        assertThat(2 * zone).isEqualTo(6.60, within(0.005));

        double bounded = 820 / (length - 1189 / 6.0);
        assertThat(bounded).isEqualTo(3.56, within(0.005));
        assertThat(Wanted.spacings(areas, weights, length, 3, 6))
                .containsExactly(new double[] {6, bounded}, within(1e-5));
        assertThat(6 / bounded).isEqualTo(1.69, within(0.005));
        assertThat(5 * (length - 1189 / 5.0) / 820).isEqualTo(1.16, within(0.005));
    }

    @Test
    void theChapterPrintsTheseFigures() throws IOException {
        assertThat(Files.readString(Path.of("..", "docs", "routing.md")).replaceAll("\\s+", " "))
                .contains(
                        "20 · 41 = 820",
                        "(820 + 1189/2)/428.57 = 3.30",
                        "6.60 pitches",
                        "820/(428.57 − 1189/6) = 3.56",
                        "6/3.56 = 1.69",
                        "with five studs 1.16");
    }

    @Test
    void aFullOrAnEmptyFloorWantsTheSameEverywhere() {
        double[] areas = {1000, 500};
        assertThat(Wanted.spacings(areas, new double[] {1, 3}, 500, 3, 5))
                .containsExactly(new double[] {3, 3}, within(1e-5));
        assertThat(Wanted.spacings(areas, new double[] {1, 3}, 300, 3, 5))
                .containsExactly(new double[] {5, 5}, within(1e-5));
        assertThat(Wanted.spacings(areas, new double[] {1, 3}, 250, 3, 5))
                .containsExactly(new double[] {6, 6}, within(1e-5));
    }

    @Test
    void wantedAndGotOfARouteAreMeasuredOnTheDrawnLine() {
        Router router = PLAIN.router().wanting(wish(168, zone(-100, 420, 1300, 980, 2)));
        CableRoute route = ((RouteOutcome.Laid) router.route(0, cable(12, false), Effort.NORMAL, 1)).route();

        ZoneDensity density = router.densities(0, List.of(route)).get(0);

        double inside = route.line()
                .intersection(
                        AffineTransformation.scaleInstance(0.001, 0.001).transform(rectangle(-100, 420, 1300, 980)))
                .getLength();
        double area = 20 * 41 * 0.028 * 0.028;
        double rest = 1189 * 0.028 * 0.028;
        assertThat(Si.in("length", density.length(), Units.METRE)).isEqualTo(inside, within(1e-5));
        assertThat(Si.in("area", density.area(), Units.SQUARE_METRE)).isEqualTo(area, within(1e-9));
        assertThat(Si.in("asked", density.asked(), Units.ONE)).isEqualTo(2);
        assertThat(Si.in("wanted", density.wanted(), Units.ONE)).isEqualTo(1.69, within(0.005));
        assertThat(Si.in("got", density.got(), Units.ONE))
                .isEqualTo(inside / area / ((route.line().getLength() - inside) / rest), within(1e-5))
                .isBetween(1.5, 1.9);
    }

    @Test
    void aHeavierZoneKeepsItsPlaceInsideALighterOne() {
        Router router = PLAIN.router()
                .wanting(wish(336, zone(0, 0, 1200, 700, 1.5), zone(0, 0, 600, 700, 2), zone(5000, 0, 6000, 100, 9)));
        CableRoute route = ((RouteOutcome.Laid) router.route(0, cable(11, false), Effort.QUICK, 1)).route();

        List<ZoneDensity> densities = router.densities(0, List.of(route));

        assertThat(densities).hasSize(2);
        assertThat(Si.in("wanted", densities.get(0).wanted(), Units.ONE)).isEqualTo(2, within(1e-4));
        // The left half of the large zone belongs to the heavier one.
        assertThat(Si.in("wanted", densities.get(1).wanted(), Units.ONE)).isEqualTo(1.75, within(0.01));
    }

    @Test
    void theSameZoneInFeetGivesTheSameRoute() {
        Polygon feet = (Polygon)
                AffineTransformation.scaleInstance(1 / 304.8, 1 / 304.8).transform(rectangle(300, 300, 800, 900));
        RouteOutcome inFeet = PLAIN.router()
                .wanting(wish(200, PriorityZone.of("zone", feet, Units.FOOT, 1.6)))
                .route(0, cable(12, false), Effort.QUICK, 3);
        RouteOutcome inMillimetres = PLAIN.router()
                .wanting(wish(200, zone(300, 300, 800, 900, 1.6)))
                .route(0, cable(12, false), Effort.QUICK, 3);

        CableRoute route = ((RouteOutcome.Laid) inMillimetres).route();
        assertThat(((RouteOutcome.Laid) inFeet).route().line().equalsExact(route.line()))
                .isTrue();
    }

    // All 24 got 0.94 to 1.09 of what was wanted when this was written, 0.997 in the median; a little less is let pass.
    @Test
    void zonesGetMostOfWhatIsWanted() {
        List<Double> shares = new ArrayList<>();
        int denser = 0;
        for (int n = 0; n < 24; n++) {
            TestSite site = new TestSite(1500 + 41 * n, 2400 - 31 * n, 26 + n % 13, 3 + n % 2, n % 4, 40 * n);
            double x = 100 + 0.3 * site.width() * ((7 * n) % 24) / 24;
            double y = 100 + 0.3 * site.depth() * ((11 * n) % 24) / 24;
            Router router = site.router()
                    .wanting(wish(
                            7.0 * site.pitch(),
                            zone(x, y, x + 0.4 * site.width(), y + 0.4 * site.depth(), 1.4 + 0.3 * (n % 3))));
            double metres = (0.6 + 0.01 * (n % 16)) * site.capacity();
            CableRoute route =
                    ((RouteOutcome.Laid) router.route(0, cable(metres, n % 5 == 0), Effort.QUICK, 7)).route();
            ZoneDensity density = router.densities(0, List.of(route)).get(0);
            double wanted = Si.in("wanted", density.wanted(), Units.ONE);
            double got = Si.in("got", density.got(), Units.ONE);
            assertThat(wanted).isGreaterThan(1.1);
            shares.add(got / wanted);
            denser += got > 1 ? 1 : 0;
        }
        shares.sort(null);
        assertThat(shares.get(12)).as(shares.toString()).isGreaterThan(0.95);
        assertThat(denser).as(shares.toString()).isGreaterThanOrEqualTo(23);
    }

    @Test
    void aGreatestSpacingOfNothingIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new PriorityZones(List.of(), Amounts.metres(0)))
                .withMessageContaining("greatest spacing");
    }
}
