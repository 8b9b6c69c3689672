package org.heatfloor.thermal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.heatfloor.quantity.Amounts;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Round studs beside the cable, against a finer three-dimensional solve that shares no code with the library's. */
class StudTest {

    private static final double FILM = 10.8;
    private static final double FINENESS = 0.9;

    private static StuddedLayer studs(
            double pitch, double stud, double height, double mortar, double studConductivity) {
        return new StuddedLayer(
                Amounts.millimetres(pitch),
                Amounts.millimetres(stud),
                Amounts.millimetres(height),
                Amounts.wattsPerMetreKelvin(mortar),
                Amounts.wattsPerMetreKelvin(studConductivity));
    }

    /** Tile, mortar over the studs, studs, deck. */
    private static BuildUp buildUp(
            StuddedLayer studs,
            double tile,
            double tileConductivity,
            double over,
            double deck,
            double deckConductivity) {
        List<Layer> membrane = studs.layers(Amounts.millimetres(over));
        return BuildUp.of(List.of(
                Floors.layer(tile, tileConductivity, false),
                membrane.get(0),
                membrane.get(1),
                Floors.layer(deck, deckConductivity, false)));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "studs.csv", numLinesToSkip = 1, delimiter = ';')
    void studsAreWhereTheyAre(
            double pitch,
            double stud,
            double height,
            double mortar,
            double studConductivity,
            double power,
            double radius,
            int channels,
            double tile,
            double tileConductivity,
            double over,
            double deck,
            double deckConductivity,
            String source) {
        StuddedLayer studs = studs(pitch, stud, height, mortar, studConductivity);
        BuildUp buildUp = buildUp(studs, tile, tileConductivity, over, deck, deckConductivity);
        EmbeddedCable cable = Floors.cable(power, radius, height - radius);
        double spacing = channels * pitch / 1000;
        Climate climate = Floors.climate(22, 12, 2);
        SteadySection section =
                SteadySection.studded(buildUp, studs, climate, Floors.film(FILM), cable, Amounts.metres(spacing));
        SteadySection uniform = SteadySection.of(buildUp, climate, Floors.film(FILM), cable, Amounts.metres(spacing));

        double p = pitch / 1000;
        double base = deck / 1000;
        double centre = base + (height - radius) / 1000;
        double tops = base + height / 1000;
        double bed = tops + over / 1000;
        double[] z = FiniteVolumes.lines(
                new double[] {0, base, centre, tops, bed, bed + tile / 1000},
                s -> FINENESS * (0.5e-3 + 0.10 * Math.abs(s - centre)));
        double[] x =
                FiniteVolumes.lines(new double[] {0, spacing / 2}, s -> FINENESS * Math.min(1.0e-3, 0.4e-3 + 0.08 * s));
        double[] y = FiniteVolumes.lines(new double[] {0, p / 2}, s -> FINENESS * 1.0e-3);
        FiniteVolumeBlock real = new FiniteVolumeBlock(x, y, z, (px, py, pz) -> {
            if (pz < base) {
                return deckConductivity;
            }
            if (pz > tops) {
                return pz > bed ? tileConductivity : mortar;
            }
            double fromStud = px - (Math.floor(px / p) + 0.5) * p;
            return Math.hypot(fromStud, py) < stud / 2000 ? studConductivity : mortar;
        });
        real.cylinderAlongY(0, centre, radius / 1000, power / 2);
        real.solve((a, b) -> FILM, 22, 2, 12);
        double[] surface = real.surfaceMeanMaxMin(FILM, 22);
        assertThat(Floors.celsius(section.surfaceMean())).isCloseTo(surface[0], within(0.01));
        assertThat(Floors.celsius(section.surfaceMax())).isCloseTo(surface[1], within(0.03));
        assertThat(Floors.celsius(section.surfaceMin())).isCloseTo(surface[2], within(0.02));
        assertThat(Floors.celsius(section.sheath())).isCloseTo(real.circleAlongY(centre, radius / 1000), within(0.06));
        // What the uniform layer alone would have said.
        assertThat(Floors.celsius(uniform.surfaceMean())).isCloseTo(surface[0], within(0.02));
        assertThat(surface[1] - Floors.celsius(uniform.surfaceMax())).isBetween(-0.05, 0.6);
        assertThat(Floors.celsius(uniform.sheath())).isCloseTo(real.circleAlongY(centre, radius / 1000), within(0.4));
    }

    /** The field of endless rows over studs is the studded section. */
    @Test
    void fieldKnowsTheStuds() {
        StuddedLayer studs = studs(34, 22, 9, 1.0, 0.05);
        BuildUp buildUp = buildUp(studs, 9, 1.3, 3.6, 18, 0.13);
        Climate climate = Floors.climate(22, 12, 2);
        EmbeddedCable cable = Floors.cable(11, 2.5, 6.5);
        FloorFieldBuilder builder = FloorField.builder(buildUp, climate, Floors.rectangle(0, 0, 1.02, 0.6))
                .law(Floors.film(FILM))
                .studs(studs)
                .heatedWithin(Amounts.metres(0.051));
        for (double[][] run : Floors.parallel(1.02, 0.6, 0.102)) {
            builder.cable(Floors.run(cable, run));
        }
        FloorField field = builder.solve();
        SteadySection section =
                SteadySection.studded(buildUp, studs, climate, Floors.film(FILM), cable, Amounts.metres(0.102));
        SteadySection uniform = SteadySection.of(buildUp, climate, Floors.film(FILM), cable, Amounts.metres(0.102));
        double max = Floors.celsius(section.surfaceMax());
        assertThat(Floors.celsius(field.floor().max())).isCloseTo(max, within(0.03));
        assertThat(Floors.celsius(field.floor().min())).isCloseTo(Floors.celsius(section.surfaceMin()), within(0.03));
        assertThat(max - Floors.celsius(uniform.surfaceMax())).isGreaterThan(0.15);
    }

    @Test
    void misfitsAreNamed() {
        StuddedLayer studs = studs(34, 22, 9, 1.0, 0.2);
        BuildUp tall = BuildUp.of(List.of(Floors.layer(9, 1.3, false), Floors.layer(12, 1, true)));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SteadySection.studded(
                        tall,
                        studs,
                        Floors.climate(22, 12, 2),
                        Floors.film(11),
                        Floors.cable(11, 2.5, 6),
                        Amounts.metres(0.1)))
                .withMessageContaining("studHeight");
        StuddedLayer narrow = studs(34, 30, 9, 1.0, 0.2);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SteadySection.studded(
                        buildUp(narrow, 9, 1.3, 4, 18, 0.13),
                        narrow,
                        Floors.climate(22, 12, 2),
                        Floors.film(11),
                        Floors.cable(11, 2.5, 6),
                        Amounts.metres(0.1)))
                .withMessageContaining("cable diameter");
    }
}
