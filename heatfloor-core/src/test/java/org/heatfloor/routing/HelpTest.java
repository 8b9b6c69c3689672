package org.heatfloor.routing;

import static org.assertj.core.api.Assertions.assertThat;

import org.heatfloor.area.KeepOut;
import org.heatfloor.area.KeepOutKind;
import org.heatfloor.area.TradeLength;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;

/** What is tried to make room for a cable. */
class HelpTest {

    private static final GeometryFactory FACTORY = new GeometryFactory();

    private static KeepOut bench(boolean round) {
        TradeLength stud = TradeLength.studs(1);
        return round
                ? KeepOut.round(
                        "stool",
                        KeepOutKind.FURNITURE_ON_LEGS,
                        FACTORY.createPoint(new Coordinate(1, 1)),
                        Units.METRE,
                        Amounts.metres(0.4),
                        stud)
                : KeepOut.of(
                        "bench",
                        KeepOutKind.FURNITURE_ON_LEGS,
                        FACTORY.toGeometry(new Envelope(1, 2, 1, 1.4)),
                        Units.METRE,
                        stud);
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void furnitureOnLegsBroughtNearerKeepsItsFreeHeight(boolean round) {
        KeepOut high = bench(round).withFreeHeight(Amounts.millimetres(120));
        KeepOut low = bench(round).withFreeHeight(Amounts.millimetres(80)).withLeastFreeHeight(Amounts.millimetres(90));

        KeepOut highNearer = Help.nearer(high, 0.01);
        KeepOut lowNearer = Help.nearer(low, 0.01);

        assertThat(highNearer.blocksCable()).isFalse();
        assertThat(highNearer.freeHeight()).isEqualTo(high.freeHeight());
        assertThat(lowNearer.blocksCable()).isTrue();
        assertThat(lowNearer.leastFreeHeight()).isEqualTo(low.leastFreeHeight());
        assertThat(lowNearer.withFreeHeight(Amounts.millimetres(90)).blocksCable())
                .isFalse();
    }

    @Test
    void aKeepOutBroughtNearerIsOtherwiseTheSame() {
        KeepOut stool = bench(true);

        KeepOut nearer = Help.nearer(stool, -0.02);

        assertThat(nearer.name()).isEqualTo("stool");
        assertThat(nearer.kind()).isEqualTo(KeepOutKind.FURNITURE_ON_LEGS);
        assertThat(nearer.shape().equalsExact(stool.shape())).isTrue();
        assertThat(nearer.radius()).isEqualTo(stool.radius());
        assertThat(nearer.clearance().with(Amounts.metres(0.034))).isEqualTo(Amounts.metres(0.0));
    }
}
