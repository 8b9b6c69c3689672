package org.heatfloor.thermal;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/** Gathers the nodes below a temperature into connected places, neighbours along the axes. */
final class ColdSearch {

    private ColdSearch() {}

    /** The places, the largest first; every node is visited once. */
    static List<ColdPlace> places(FieldGrid grid, double[][] kelvin, boolean[][] mask, double belowKelvin) {
        boolean[][] open = new boolean[mask.length][];
        for (int j = 0; j < mask.length; j++) {
            open[j] = mask[j].clone();
            for (int i = 0; i < open[j].length; i++) {
                open[j][i] &= kelvin[j][i] < belowKelvin;
            }
        }
        List<ColdPlace> places = new ArrayList<>();
        for (int j = 0; j < open.length; j++) {
            for (int i = 0; i < open[j].length; i++) {
                if (open[j][i]) {
                    places.add(fill(grid, kelvin, open, i, j));
                }
            }
        }
        places.sort(Comparator.comparingDouble(p -> -Si.in("area", p.area(), Units.SQUARE_METRE)));
        return List.copyOf(places);
    }

    private static ColdPlace fill(FieldGrid grid, double[][] kelvin, boolean[][] open, int i0, int j0) {
        Deque<int[]> front = new ArrayDeque<>();
        open[j0][i0] = false;
        front.push(new int[] {i0, j0});
        double weight = 0;
        int iMin = i0;
        int jMin = j0;
        while (!front.isEmpty()) {
            int[] node = front.pop();
            int i = node[0];
            int j = node[1];
            weight += grid.weight(i, j);
            if (kelvin[j][i] < kelvin[jMin][iMin]) {
                iMin = i;
                jMin = j;
            }
            reach(open, front, i - 1, j);
            reach(open, front, i + 1, j);
            reach(open, front, i, j - 1);
            reach(open, front, i, j + 1);
        }
        return new ColdPlace(
                new SurfaceSummary.Spot(Amounts.metres(grid.x(iMin)), Amounts.metres(grid.y(jMin))),
                SteadySection.celsius(kelvin[jMin][iMin]),
                Amounts.squareMetres(weight * grid.cellArea()));
    }

    private static void reach(boolean[][] open, Deque<int[]> front, int i, int j) {
        if (j >= 0 && j < open.length && i >= 0 && i < open[j].length && open[j][i]) {
            open[j][i] = false;
            front.push(new int[] {i, j});
        }
    }
}
