package org.heatfloor.area;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import net.jqwik.api.Property;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.QuantityText;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;

/** Every number printed in the chapter on area. */
class AreaChapterTest {

    private static final Path CHAPTER = Path.of("..", "docs", "area.md");
    private static final GeometryFactory FACTORY = new GeometryFactory();
    private static final Room WASHROOM =
            Room.ofWkt("POLYGON ((0 0, 2410 0, 2410 1640, 2110 1640, 2110 1960, 0 1960, 0 0))", Units.MILLIMETRE);
    private static final TradeLength WALL = TradeLength.of(Amounts.millimetres(60));
    private static final Quantity<Length> PITCH = Amounts.millimetres(34);

    @Test
    void wall_runs() throws IOException {
        SurveyedRoom surveyed = WallRuns.start()
                .wall("south", Amounts.metres(4.006))
                .left()
                .wall("east", Amounts.metres(3))
                .left()
                .wall("north", Amounts.metres(4))
                .left()
                .wall("west", Amounts.metres(3))
                .close();
        Measurement south = surveyed.measurements().get(0);

        printed("gap is " + millimetres(surveyed.misclosure(), 0) + " mm in 14.006 m");
        printed("1 : " + Math.round(surveyed.misclosureRatio().orElseThrow()));
        printed("= " + millimetres(south.residual().multiply(-1), 3) + " mm");
        printed("becomes " + QuantityText.write(south.adjusted(), 3) + " long");
        printed("more than 1 : " + Math.round(WallRuns.USUAL_LEAST_RATIO));
    }

    @Test
    void walls_and_diagonals() throws IOException {
        SurveyedRoom surveyed = WallsAndDiagonals.from("A")
                .wallTo("B", Amounts.metres(4))
                .wallTo("C", Amounts.metres(3))
                .wallTo("D", Amounts.metres(4))
                .wallTo("A", Amounts.metres(3))
                .diagonal("A", "C", Amounts.metres(5.010))
                .diagonal("B", "D", Amounts.metres(5))
                .place();

        assertThat(millimetres(surveyed.measurements().get(0).residual(), 1)).isEqualTo("2");
        assertThat(millimetres(surveyed.measurements().get(1).residual(), 1)).isEqualTo("1.5");
        assertThat(millimetres(surveyed.measurements().get(4).residual(), 1)).isEqualTo("-2.5");
        assertThat(millimetres(surveyed.measurements().get(5).residual(), 1)).isEqualTo("-2.5");
        printed("long walls grow by 2.0 mm, the short ones by 1.5 mm, the\ndiagonals shrink by 2.5 mm");
        printed("compared with " + DiagonalAdjustment.CRITICAL);
        printed("(" + millimetres(WallsAndDiagonals.from("A").readTo(), 0) + " mm, common practice");
    }

    @ParameterizedTest
    @EnumSource(KeepOutKind.class)
    void usual_clearances(KeepOutKind kind) throws IOException {
        UsualClearance usual = UsualClearance.of(kind);

        printed("| " + kind.name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ') + " | " + usual.clearance()
                + " | " + usual.reason() + " |");
    }

    @Test
    void furniture_on_legs() throws IOException {
        printed("at least " + QuantityText.number(KeepOut.USUAL_LEAST_FREE_HEIGHT_METRES * 1000, 0)
                + " mm of free height");
        printed("narrower than " + millimetres(AreaRules.usual().standingWidth(), 0) + " mm, where no one stands");
    }

    @Test
    void the_washroom_at_sixty_millimetres() throws IOException {
        HeatableArea area = HeatableArea.of(WASHROOM, WALL, List.of(), PITCH);
        double byHand = 2.29 * 1.52 + 1.99 * 0.32 + (1 - Math.PI / 4) * 0.06 * 0.06;

        printed(QuantityText.number(2.41 * 1.64 + 2.11 * 0.32, 4) + " m²");
        printed("together " + QuantityText.number(byHand, 4) + " m²");
        printed("gives " + QuantityText.write(area.heatableArea(), 4));
        printed("factor of " + QuantityText.number(1 / Math.cos(Math.max(3 * Math.PI / (8 * 24), 0.05)), 5));
    }

    @Test
    void the_washroom_with_its_fixtures() throws IOException {
        HeatableArea area = HeatableArea.of(WASHROOM, WALL, washroomKeepOuts(), PITCH);

        printed("keeps " + QuantityText.write(area.heatableArea(), 3) + " of "
                + QuantityText.write(area.floorArea(), 3) + " heatable, a share of "
                + QuantityText.number(Si.in("share", area.heatableShare(), Units.PERCENT), 1) + " %");
    }

    @Test
    void reach_of_a_circle() throws IOException {
        double widest = 2 * Math.asin(0.5 / Offsets.REACH);
        double before = Math.sqrt(150 * 150 - 100 * 100);

        printed("(2 · arcsin(0.5/0.75) = " + QuantityText.number(Math.toDegrees(widest), 1) + "°)");
        printed("√(150² − 100²) = " + Math.round(before) + " mm");
        printed("within " + Math.round(Offsets.REACH * 300) + " mm of that centre, "
                + Math.round(Offsets.REACH * 300 - before) + " mm past the corner");
    }

    @Test
    void rooms_tried() throws IOException {
        printed(tries("the_region_keeps_every_clearance") + " random rooms with keep-outs in every run");
        printed("on " + tries("one_keep_out_more_never_leaves_more_and_a_wider_clearance_neither")
                + " random rooms a\nrun");
    }

    private static String tries(String law) {
        return Arrays.stream(AreaProperties.class.getDeclaredMethods())
                .filter(m -> m.getName().equals(law))
                .map(m -> String.format(
                        Locale.ROOT, "%,d", m.getAnnotation(Property.class).tries()))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void joint_rules() throws IOException {
        for (JointRule rule : List.of(
                JointRule.interiorNorthAmerica(),
                JointRule.sunOrMoistureNorthAmerica(),
                JointRule.heatedNorthAmerica())) {
            printed(QuantityText.write(rule.longestSide(), 1) + " |");
        }
        JointRule europe = JointRule.heatedScreedEurope();
        printed("| " + QuantityText.write(europe.longestSide(), 1) + " | "
                + QuantityText.write(europe.largestArea().orElseThrow(), 1) + " | "
                + QuantityText.number(europe.greatestRatio().orElseThrow(), 1) + " : 1 | from memory: EN 1264-4");
        assertThat(JointRule.heatedUnitedKingdom().largestArea()).isEqualTo(Optional.of(Amounts.squareMetres(40)));
        Room hall =
                Room.of((org.locationtech.jts.geom.Polygon) FACTORY.toGeometry(new Envelope(0, 17, 0, 5)), Units.METRE);
        FloorReadiness ready =
                FloorReadiness.of(hall, List.of(), HeatableArea.of(hall, WALL, List.of(), PITCH), europe);
        assertThat(ready.findings().get(0).message()).contains("2 joints").contains("3 bays of 5.67 m");
        printed("3 bays of 5.67 m, that is 2 joints");
    }

    static List<KeepOut> washroomKeepOuts() {
        return List.of(
                KeepOut.round(
                        "pan",
                        KeepOutKind.TOILET_FLANGE,
                        FACTORY.createPoint(new Coordinate(430, 1655)),
                        Units.MILLIMETRE,
                        Amounts.millimetres(110),
                        TradeLength.studs(7)),
                KeepOut.of(
                        "register",
                        KeepOutKind.AIR_REGISTER,
                        FACTORY.toGeometry(new Envelope(1700, 1960, 1760, 1860)),
                        Units.MILLIMETRE,
                        TradeLength.studs(4)),
                KeepOut.of(
                        "linen cabinet",
                        KeepOutKind.FIXED_FURNITURE,
                        FACTORY.toGeometry(new Envelope(0, 470, 0, 900)),
                        Units.MILLIMETRE,
                        TradeLength.of(Amounts.millimetres(30))));
    }

    private static void printed(String text) throws IOException {
        assertThat(Files.readString(CHAPTER)).contains(text);
    }

    private static String millimetres(Quantity<Length> length, int decimals) {
        return QuantityText.number(Si.in("length", length, Units.MILLIMETRE), decimals);
    }
}
