package org.heatfloor.thermal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The fast cosine transform against its definition. */
class CosineTransformTest {

    @ParameterizedTest
    @CsvSource({"4, 8", "12, 16", "36, 24", "288, 4", "96, 18"})
    void isItsDefinition(int nx, int ny) {
        Random random = new Random(nx * 1000L + ny);
        double[][] values = new double[ny + 1][nx + 1];
        for (double[] row : values) {
            for (int i = 0; i <= nx; i++) {
                row[i] = random.nextDouble() - 0.5;
            }
        }
        double[][] found = new double[ny + 1][];
        for (int j = 0; j <= ny; j++) {
            found[j] = values[j].clone();
        }
        CosineTransform.transform(found);
        for (int n = 0; n <= ny; n++) {
            for (int m = 0; m <= nx; m++) {
                double sum = 0;
                for (int j = 0; j <= ny; j++) {
                    for (int i = 0; i <= nx; i++) {
                        sum += values[j][i]
                                * (i == 0 || i == nx ? 0.5 : 1)
                                * (j == 0 || j == ny ? 0.5 : 1)
                                * Math.cos(Math.PI * m * i / nx)
                                * Math.cos(Math.PI * n * j / ny);
                    }
                }
                assertThat(found[n][m]).isCloseTo(sum, within(1e-9));
            }
        }
    }

    @Test
    void lengthsAreNotLongerThanNeeded() {
        assertThat(FourierTransform.lengthFor(2)).isEqualTo(4);
        assertThat(FourierTransform.lengthFor(241)).isEqualTo(256);
        assertThat(FourierTransform.lengthFor(257)).isEqualTo(288);
        assertThat(FourierTransform.lengthFor(410)).isEqualTo(512);
        assertThat(FourierTransform.lengthFor(520)).isEqualTo(576);
    }
}
