package org.heatfloor.thermal;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Random routes for laws, the same for the same seed. */
final class Routes {

    private Routes() {}

    /** A wandering path of straight pieces inside a rectangle from 0 0. */
    static double[][] wandering(long seed, double width, double height, int corners) {
        Random random = new Random(seed);
        List<double[]> path = new ArrayList<>();
        for (int i = 0; i < corners; i++) {
            path.add(new double[] {width * random.nextDouble(), height * random.nextDouble()});
        }
        return path.toArray(new double[0][]);
    }

    static double[][] mirrored(double[][] path, double width) {
        double[][] mirrored = new double[path.length][];
        for (int i = 0; i < path.length; i++) {
            mirrored[i] = new double[] {width - path[i][0], path[i][1]};
        }
        return mirrored;
    }
}
