package org.heatfloor.thermal;

import java.util.List;

/**
 * Covers on the nodes of a grid as resistances over the surface film. A cell that a cover meets in part takes the mean
 * conductance of a finer grid's nodes in it, put back into one resistance.
 */
final class CoverMap {

    private static final int FINER = 4;
    /** The film at which a cell cut by a cover's edge is averaged, W/(m²·K). */
    private static final double USUAL_FILM = 11;

    private CoverMap() {}

    /** m²·K/W a node. */
    static double[][] resistance(FieldGrid grid, List<FloorCover> covers) {
        FieldGrid fine =
                new FieldGrid(grid.x0(), grid.y0(), grid.width(), grid.height(), FINER * grid.nx(), FINER * grid.ny());
        double[][] fineResistance = fine.empty();
        for (FloorCover cover : covers) {
            boolean[][] mask = cover.shape().mask(fine);
            for (int j = 0; j < mask.length; j++) {
                for (int i = 0; i < mask[j].length; i++) {
                    fineResistance[j][i] += mask[j][i] ? cover.resistanceSi() : 0;
                }
            }
        }
        double[][] resistance = grid.empty();
        for (int j = 0; j <= grid.ny(); j++) {
            for (int i = 0; i <= grid.nx(); i++) {
                resistance[j][i] = cell(fine, fineResistance, FINER * i, FINER * j);
            }
        }
        return resistance;
    }

    private static double cell(FieldGrid fine, double[][] resistance, int ci, int cj) {
        double weights = 0;
        double conductance = 0;
        for (int b = -FINER / 2; b <= FINER / 2; b++) {
            for (int a = -FINER / 2; a <= FINER / 2; a++) {
                int i = ci + a;
                int j = cj + b;
                if (i < 0 || j < 0 || i > fine.nx() || j > fine.ny()) {
                    continue;
                }
                double weight = (Math.abs(a) == FINER / 2 ? 0.5 : 1) * (Math.abs(b) == FINER / 2 ? 0.5 : 1);
                weights += weight;
                conductance += weight / (1 / USUAL_FILM + resistance[j][i]);
            }
        }
        return Math.max(0, weights / conductance - 1 / USUAL_FILM);
    }
}
