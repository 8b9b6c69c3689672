package org.heatfloor.examples.cpsat;

import java.util.Arrays;
import org.heatfloor.examples.LatticeRoute;
import org.heatfloor.examples.SmallRoom;

/** Every route of a tiny room, junction by junction, with the planning rule as it is stated. */
final class AllRoutes {

    private static final int LEAD_RUNS = 3;

    private final SmallRoom room;
    private final int k;
    private final int leastRun;
    /** Junctions of the route in order. */
    private final int[] px;

    private final int[] py;
    private final int[] cornerX = new int[20];
    private final int[] cornerY = new int[20];
    private int most;
    private double leadLeft;
    private boolean found;

    AllRoutes(SmallRoom room) {
        this.room = room;
        k = room.spacing();
        leastRun = Math.max(1, (int) Math.ceil(2 * room.bendRadius() / room.pitch() - 1e-6));
        px = new int[room.width() * room.height() + 1];
        py = new int[px.length];
    }

    /** The fewest turns with which the cable can be laid exactly. */
    int fewestTurns(int limit) {
        for (int turns = 0; turns <= limit; turns++) {
            for (int lead = 0; lead <= LEAD_RUNS && !found; lead++) {
                most = lead + turns + 1;
                for (SmallRoom.Entry entry : room.entries()) {
                    cornerX[0] = entry.x();
                    cornerY[0] = entry.y();
                    leadLeft = room.leadInFloor() - entry.lead() - room.jointLength();
                    px[0] = entry.x();
                    py[0] = entry.y();
                    for (int d = 0; d < 4 && !found; d++) {
                        run(0, d, 1, lead);
                    }
                }
            }
            if (found) {
                return turns;
            }
        }
        throw new IllegalStateException("more than " + limit + " turns");
    }

    /** Lays a run in a direction, every length there is, and what may follow. */
    private void run(int run, int direction, int laid, int lead) {
        int dx = direction == 0 ? 1 : direction == 2 ? -1 : 0;
        int dy = direction == 1 ? 1 : direction == 3 ? -1 : 0;
        int n = laid;
        for (int length = 1; !found; length++, n++) {
            int x = px[n - 1];
            int y = py[n - 1];
            boolean channel = dx > 0
                    ? room.freeEast(x, y)
                    : dx < 0 ? room.freeEast(x - 1, y) : dy > 0 ? room.freeNorth(x, y) : room.freeNorth(x, y - 1);
            if (!channel || !keepsRule(x + dx, y + dy, n)) {
                return;
            }
            px[n] = x + dx;
            py[n] = y + dy;
            if (run < lead && n * room.pitch() > leadLeft + 1e-9) {
                return;
            }
            cornerX[run + 1] = px[n];
            cornerY[run + 1] = py[n];
            if (run + 1 == most) {
                found = exact(lead);
            } else if (length >= leastRun && (run != lead || length * room.pitch() >= room.jointLength())) {
                run(run + 1, (direction + 1) % 4, n + 1, lead);
                run(run + 1, (direction + 3) % 4, n + 1, lead);
            }
        }
    }

    private boolean keepsRule(int x, int y, int n) {
        for (int i = 0; i < n; i++) {
            int ax = Math.abs(px[i] - x);
            int ay = Math.abs(py[i] - y);
            if (Math.max(ax, ay) < k && n - i != ax + ay) {
                return false;
            }
        }
        return true;
    }

    private boolean exact(int lead) {
        int heated = 0;
        for (int c = lead; c < most; c++) {
            heated += Math.abs(cornerX[c + 1] - cornerX[c]) + Math.abs(cornerY[c + 1] - cornerY[c]);
        }
        if (heated * room.pitch() < room.cableLength() - 1e-9) {
            return false;
        }
        try {
            int[] xs = Arrays.copyOf(cornerX, most + 1);
            int[] ys = Arrays.copyOf(cornerY, most + 1);
            return new LatticeRoute(room, lead, xs, ys).laidMetres() > 0;
        } catch (IllegalArgumentException e) {
            return false;
        }
    }
}
