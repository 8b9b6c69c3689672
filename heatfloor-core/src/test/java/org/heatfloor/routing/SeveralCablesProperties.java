package org.heatfloor.routing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/** Laws of a floor shared by several cables. */
class SeveralCablesProperties {

    @Provide
    Arbitrary<TestSite> sites() {
        return Combinators.combine(
                        Arbitraries.integers().between(2400, 4200),
                        Arbitraries.integers().between(1800, 3600),
                        Arbitraries.integers().between(28, 40),
                        Arbitraries.of(3, 4),
                        Arbitraries.integers().between(0, 3),
                        Arbitraries.integers().between(0, 1000))
                .as(TestSite::new);
    }

    static CableToLay cable(int number, double metres, boolean returns) {
        return new CableToLay(
                "no. " + number,
                returns ? 1 : 2,
                Amounts.metres(metres),
                Amounts.millimetres(5),
                Amounts.metres(8));
    }

    /** Cables that fill a share of the bound together, the first longer than the others by a factor. */
    static List<CableToLay> cables(TestSite site, int count, double share, double first, boolean returns) {
        double total = share * site.capacity(returns);
        List<CableToLay> out = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            out.add(cable(i, total * (i == 0 ? first : 1) / (count - 1 + first), returns));
        }
        return out;
    }

    @Property(tries = 20, shrinking = ShrinkingMode.OFF)
    void cablesTogetherAreExactAndPassTheIndependentCheck(
            @ForAll("sites") TestSite site,
            @ForAll @IntRange(min = 2, max = 3) int count,
            @ForAll @DoubleRange(min = 0.6, max = 0.8) @Scale(3) double share,
            @ForAll @DoubleRange(min = 1, max = 1.8) @Scale(2) double first,
            @ForAll boolean returns) {
        List<CableToLay> cables = cables(site, count, share, first, returns);

        SharedOutcome outcome = site.router().routeSeveral(0, cables, Effort.QUICK, 7);

        assertThat(outcome).as("%s", outcome).isInstanceOf(SharedOutcome.Laid.class);
        SharedOutcome.Laid laid = (SharedOutcome.Laid) outcome;
        assertThat(site.check(laid.routes()).findings()).noneMatch(f -> f.isError());
        for (int i = 0; i < count; i++) {
            assertThat(Si.in("laid", laid.routes().get(i).laidLength(), Units.METRE))
                    .isEqualTo(Si.in("length", cables.get(i).length(), Units.METRE), within(1e-6));
        }
    }
}
