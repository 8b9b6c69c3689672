package org.heatfloor.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.junit.jupiter.api.Test;

class SchoolhouseTest {

    static void print(String name, TakeOff t) {
        System.out.println("== " + name + " area " + t.membraneArea());
        t.membraneCut().ifPresent(c -> {
            System.out.println("membrane pieces " + c.pieces().size() + " stock " + c.stockCount() + " bound "
                    + c.lowerBound() + " joints " + c.joints().size() + " " + c.jointLength() + " waste " + c.waste()
                    + " dir " + c.direction());
            c.pieces()
                    .forEach(p -> System.out.println("  " + p.number() + " stock " + p.stockNumber() + " from "
                            + p.from() + " across " + p.across() + " " + p.length() + " x " + p.width() + " "
                            + p.inRoom().getEnvelopeInternal()));
        });
        t.mortars().forEach(System.out::println);
        t.layout()
                .ifPresent(l -> System.out.println("tiles whole " + l.wholeTiles() + " cut " + l.cutTiles()
                        + " needed " + l.tilesNeeded() + " bound " + l.lowerBound() + " buy " + l.tilesToBuy()
                        + " narrowest "
                        + l.narrowest() + " " + l.narrowestWidth() + " dir " + l.direction() + " under half "
                        + l.piecesUnder(org.heatfloor.quantity.Amounts.of(50, Units.PERCENT))));
        System.out.println(t.grout());
        System.out.println(t.height() + " " + t.height().map(FloorHeight::total));
        t.doorSteps().forEach(System.out::println);
        t.findings().forEach(System.out::println);
    }

    @Test
    void showAll() {
        long t0 = System.nanoTime();
        print("washroom", Schoolhouse.washroom().build());
        long t1 = System.nanoTime();
        print("boot", Schoolhouse.bootRoom().build());
        long t2 = System.nanoTime();
        print("kitchen", Schoolhouse.kitchen().build());
        long t3 = System.nanoTime();
        System.out.println((t1 - t0) / 1e6 + " " + (t2 - t1) / 1e6 + " " + (t3 - t2) / 1e6);
    }

    @Test
    void washroomHeightAgreesWithItsBuildUp() {
        FloorHeight height = Schoolhouse.washroom().build().height().orElseThrow();
        assertThat(Si.in("bed", height.lowerBed(), Units.MILLIMETRE)).isCloseTo(2.735, within(5e-4));
    }
}
