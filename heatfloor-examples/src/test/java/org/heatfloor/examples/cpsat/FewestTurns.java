package org.heatfloor.examples.cpsat;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.IntervalVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import com.google.ortools.sat.NoOverlap2dConstraint;
import com.google.ortools.sat.TableConstraint;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.heatfloor.examples.LatticeRoute;
import org.heatfloor.examples.SmallRoom;

/**
 * Whether a cable of exact length can be laid one-ended with a given number of turns: an exact model for CP-SAT.
 *
 * <p>The unknowns are the runs, alternately along the rows and along the columns. A square of the spacing's side that goes
 * along with the route sweeps one rectangle a run, the square at the end of the run left out; the planning rule (two
 * places nearer than the spacing are joined by a stretch that never turns back) holds exactly when all these rectangles and
 * the last square are disjoint, which is one two-dimensional packing constraint (derived). Up to three runs before the
 * joint carry the cold lead and count no turns.
 */
final class FewestTurns {

    private static final int LEAD_RUNS = 3;
    private static final double NANOMETRES = 1e9;
    private static final double CORNER = 2 - Math.PI / 2;

    /** What became of one question. */
    record Answer(CpSolverStatus status, Optional<LatticeRoute> route, double seconds) {

        boolean impossible() {
            return status == CpSolverStatus.INFEASIBLE;
        }
    }

    private final SmallRoom room;
    private final int turns;
    private final boolean startsAcross;
    private final CpModel model = new CpModel();
    private final int runs;
    private final int first;
    private final int k;
    private final int leastRun;
    private final int left;
    private final int right;
    private final int bottom;
    private final int top;

    /** Corners in order; a corner shares its unchanged coordinate with the one before. */
    private final IntVar[] xs;

    private final IntVar[] ys;
    private final IntVar[] lengths;
    private final BoolVar[] forwards;
    private final Literal[] leadPresent = new Literal[LEAD_RUNS];

    /**
     * A question.
     *
     * @param room the floor and its cable
     * @param turns of the heating part
     * @param startsAcross whether the heating part's first run lies along the columns
     */
    FewestTurns(SmallRoom room, int turns, boolean startsAcross) {
        this.room = room;
        this.turns = turns;
        this.startsAcross = startsAcross;
        k = room.spacing();
        leastRun = Math.max(1, (int) Math.ceil(2 * room.bendRadius() / room.pitch() - 1e-6));
        first = LEAD_RUNS;
        runs = LEAD_RUNS + turns + 1;
        int[] box = box();
        left = box[0];
        right = box[1];
        bottom = box[2];
        top = box[3];
        xs = new IntVar[runs + 1];
        ys = new IntVar[runs + 1];
        lengths = new IntVar[runs];
        forwards = new BoolVar[runs];
        corners();
        packing();
        blocked();
        ends();
    }

    private int[] box() {
        int[] box = {Integer.MAX_VALUE, -1, Integer.MAX_VALUE, -1};
        for (int y = 0; y < room.height(); y++) {
            for (int x = 0; x < room.width(); x++) {
                if (room.free(x, y)) {
                    box[0] = Math.min(box[0], x);
                    box[1] = Math.max(box[1], x);
                    box[2] = Math.min(box[2], y);
                    box[3] = Math.max(box[3], y);
                }
            }
        }
        return box;
    }

    private boolean across(int run) {
        return (run - first) % 2 == 0 == startsAcross;
    }

    private void corners() {
        xs[0] = model.newIntVar(left, right, "x0");
        ys[0] = model.newIntVar(bottom, top, "y0");
        for (int run = 0; run < runs; run++) {
            boolean across = across(run);
            xs[run + 1] = across ? xs[run] : model.newIntVar(left, right, "x" + (run + 1));
            ys[run + 1] = across ? model.newIntVar(bottom, top, "y" + (run + 1)) : ys[run];
            boolean lead = run < first;
            boolean last = run == runs - 1;
            int least = lead ? 0 : last ? 1 : leastRun;
            lengths[run] = model.newIntVar(least, across ? top - bottom : right - left, "l" + run);
            forwards[run] = model.newBoolVar("f" + run);
            IntVar from = across ? ys[run] : xs[run];
            IntVar to = across ? ys[run + 1] : xs[run + 1];
            model.addEquality(LinearExpr.weightedSum(new IntVar[] {to, from}, new long[] {1, -1}), lengths[run])
                    .onlyEnforceIf(forwards[run]);
            model.addEquality(LinearExpr.weightedSum(new IntVar[] {from, to}, new long[] {1, -1}), lengths[run])
                    .onlyEnforceIf(forwards[run].not());
            if (lead) {
                BoolVar present = model.newBoolVar("p" + run);
                leadPresent[run] = present;
                model.addGreaterOrEqual(lengths[run], leastRun).onlyEnforceIf(present);
                model.addEquality(lengths[run], 0).onlyEnforceIf(present.not());
                model.addImplication(present.not(), forwards[run]);
                if (run > 0) {
                    model.addImplication(leadPresent[run - 1], present);
                }
            }
        }
    }

    /** The swept rectangles are disjoint. */
    private void packing() {
        NoOverlap2dConstraint disjoint = model.addNoOverlap2D();
        for (int run = 0; run < runs; run++) {
            boolean across = across(run);
            IntVar from = across ? ys[run] : xs[run];
            IntVar to = across ? ys[run + 1] : xs[run + 1];
            int low = across ? bottom : left;
            int high = across ? top : right;
            IntVar begin = model.newIntVar(low, high + k, "b" + run);
            model.addEquality(begin, from).onlyEnforceIf(forwards[run]);
            model.addEquality(begin, LinearExpr.affine(to, 1, k)).onlyEnforceIf(forwards[run].not());
            IntVar end = model.newIntVar(low, high + k, "e" + run);
            model.addEquality(end, to).onlyEnforceIf(forwards[run]);
            model.addEquality(end, LinearExpr.affine(from, 1, k)).onlyEnforceIf(forwards[run].not());
            IntervalVar along = run < first
                    ? model.newOptionalIntervalVar(begin, lengths[run], end, leadPresent[run], "along" + run)
                    : model.newIntervalVar(begin, lengths[run], end, "along" + run);
            IntVar side = across ? xs[run] : ys[run];
            IntervalVar wide = run < first
                    ? model.newOptionalFixedSizeIntervalVar(side, k, leadPresent[run], "wide" + run)
                    : model.newFixedSizeIntervalVar(side, k, "wide" + run);
            disjoint.addRectangle(across ? wide : along, across ? along : wide);
        }
        disjoint.addRectangle(
                model.newFixedSizeIntervalVar(xs[runs], k, "endX"), model.newFixedSizeIntervalVar(ys[runs], k, "endY"));
        for (int[] r : Rectangles.of(left, right + k, bottom, top + k, this::unreached)) {
            disjoint.addRectangle(
                    model.newFixedInterval(r[0], r[1] - r[0], "nx"), model.newFixedInterval(r[2], r[3] - r[2], "ny"));
        }
    }

    /** A cell that no square of a free junction covers. */
    private boolean unreached(int x, int y) {
        for (int dy = 0; dy < k; dy++) {
            for (int dx = 0; dx < k; dx++) {
                if (room.free(x - dx, y - dy)) {
                    return false;
                }
            }
        }
        return true;
    }

    /** No run over a junction or a channel that is not free. */
    private void blocked() {
        for (int[] r : Rectangles.of(left, right + 1, bottom, top + 1, (x, y) -> !room.free(x, y))) {
            for (int run = 0; run < runs; run++) {
                avoid(run, r[0], r[1] - 1, r[2], r[3] - 1);
            }
        }
        for (int y = bottom; y <= top; y++) {
            for (int x = left; x <= right; x++) {
                for (int run = 0; run < runs; run++) {
                    if (!across(run) && room.free(x, y) && room.free(x + 1, y) && !room.freeEast(x, y)) {
                        avoidChannel(run, x, y);
                    }
                    if (across(run) && room.free(x, y) && room.free(x, y + 1) && !room.freeNorth(x, y)) {
                        avoidChannel(run, x, y);
                    }
                }
            }
        }
    }

    /** A run does not meet the junctions x0..x1, y0..y1. */
    private void avoid(int run, int x0, int x1, int y0, int y1) {
        BoolVar westward = model.newBoolVar("w");
        BoolVar eastward = model.newBoolVar("e");
        BoolVar southward = model.newBoolVar("s");
        BoolVar northward = model.newBoolVar("n");
        for (int end = run; end <= run + 1; end++) {
            model.addLessThan(xs[end], x0).onlyEnforceIf(westward);
            model.addGreaterThan(xs[end], x1).onlyEnforceIf(eastward);
            model.addLessThan(ys[end], y0).onlyEnforceIf(southward);
            model.addGreaterThan(ys[end], y1).onlyEnforceIf(northward);
        }
        model.addBoolOr(new Literal[] {westward, eastward, southward, northward});
    }

    private void avoidChannel(int run, int x, int y) {
        boolean across = across(run);
        BoolVar before = model.newBoolVar("cb");
        BoolVar behind = model.newBoolVar("ca");
        BoolVar under = model.newBoolVar("cu");
        BoolVar over = model.newBoolVar("co");
        for (int end = run; end <= run + 1; end++) {
            model.addLessOrEqual(across ? ys[end] : xs[end], across ? y : x).onlyEnforceIf(before);
            model.addGreaterThan(across ? ys[end] : xs[end], across ? y : x).onlyEnforceIf(behind);
        }
        model.addLessThan(across ? xs[run] : ys[run], across ? x : y).onlyEnforceIf(under);
        model.addGreaterThan(across ? xs[run] : ys[run], across ? x : y).onlyEnforceIf(over);
        model.addBoolOr(new Literal[] {before, behind, under, over});
    }

    /** The joint, the lead and the exact length. */
    private void ends() {
        double r = room.bendRadius();
        double joint = room.jointLength();
        long pitch = nano(room.pitch());
        BoolVar straight = model.newBoolVar("straight");
        model.addImplication(straight, leadPresent[first - 1].not());
        IntVar way = model.newIntVar(0, nano(room.leadInFloor()), "way");
        IntVar back = model.newIntVar(0, nano(joint), "back");
        TableConstraint table =
                model.addAllowedAssignments(new IntVar[] {xs[0], ys[0], forwards[first], straight, way, back});
        for (SmallRoom.Entry entry : room.entries()) {
            long lead = (long) Math.floor(entry.lead() * NANOMETRES);
            if (lead > nano(room.leadInFloor())) {
                continue;
            }
            double room0 = entry.along() < 1e-6 ? entry.in() : entry.in() - r;
            long into = (long) Math.ceil(Math.max(0, Math.min(joint, room0)) * NANOMETRES);
            for (int forward = 0; forward <= 1; forward++) {
                table.addTuple(new long[] {entry.x(), entry.y(), forward, 0, lead, 0});
                int sign = forward == 1 ? 1 : -1;
                if (startsAcross ? entry.dy() == sign : entry.dx() == sign) {
                    table.addTuple(new long[] {entry.x(), entry.y(), forward, 1, lead, into});
                }
            }
        }
        // Lead: along the wall, in, over its runs and the joint.
        LinearExprBuilder lead = LinearExpr.newBuilder().add(way).addTerm(straight, -nano(r));
        for (int run = 0; run < first; run++) {
            lead.addTerm(lengths[run], pitch);
        }
        model.addLessOrEqual(lead, nano(room.leadInFloor() - joint - r) + 10);
        // The joint lies straight on the first heating run.
        model.addGreaterOrEqual(
                LinearExpr.newBuilder().addTerm(lengths[first], pitch).addTerm(straight, nano(r)),
                nano(joint + 2 * r) - 10);
        // Length: at least the cable's with the joint drawn back, at most what end and joint give up.
        LinearExprBuilder least = LinearExpr.newBuilder().add(back).addTerm(straight, nano(r));
        LinearExprBuilder most = LinearExpr.newBuilder();
        for (int run = first; run < runs; run++) {
            least.addTerm(lengths[run], pitch);
            if (run > first && run < runs - 1) {
                most.addTerm(lengths[run], pitch);
            }
        }
        double needed = room.cableLength() + joint + r + CORNER * r * turns;
        model.addGreaterOrEqual(least, nano(needed) - 1000);
        if (turns > 1) {
            // What is left when the last run is trimmed to its bend and the joint moved to the end of its run.
            model.addLessOrEqual(most, nano(room.cableLength() + CORNER * r * turns - 2 * r) + 1000);
        }
        // A last run longer than a pitch is cut back by whole pitches instead.
        BoolVar shortest = model.newBoolVar("shortest");
        model.addLessOrEqual(lengths[runs - 1], 1).onlyEnforceIf(shortest);
        LinearExprBuilder laid = LinearExpr.newBuilder().addTerm(straight, nano(r));
        for (int run = first; run < runs; run++) {
            laid.addTerm(lengths[run], pitch);
        }
        model.addLessOrEqual(laid, nano(needed) + pitch).onlyEnforceIf(shortest.not());
    }

    /**
     * Wants a junction no farther than a distance from the heating part. Where the joint takes the beginning of the first
     * run, and the trimming a piece of the last, they count as heated, so that a refusal stays proved.
     *
     * @param x column
     * @param y row
     * @param reach the distance, in pitches
     */
    void warm(int x, int y, double reach) {
        List<Literal> near = new ArrayList<>();
        int most = (int) Math.floor(reach + 1e-9);
        for (int run = first; run < runs; run++) {
            boolean across = across(run);
            IntVar side = across ? xs[run] : ys[run];
            IntVar from = across ? ys[run] : xs[run];
            IntVar to = across ? ys[run + 1] : xs[run + 1];
            int beside = across ? x : y;
            int ahead = across ? y : x;
            int widthBefore = -1;
            for (int d = most; d >= 0; d--) {
                int width = (int) Math.floor(Math.sqrt(reach * reach - d * d) + 1e-9);
                if (width == widthBefore) {
                    continue;
                }
                widthBefore = width;
                BoolVar within = model.newBoolVar("warm");
                model.addLinearConstraint(side, beside - d, beside + d).onlyEnforceIf(within);
                for (int forward = 0; forward <= 1; forward++) {
                    Literal goes = forward == 1 ? forwards[run] : forwards[run].not();
                    model.addLessOrEqual(forward == 1 ? from : to, ahead + width)
                            .onlyEnforceIf(new Literal[] {within, goes});
                    model.addGreaterOrEqual(forward == 1 ? to : from, ahead - width)
                            .onlyEnforceIf(new Literal[] {within, goes});
                }
                near.add(within);
            }
        }
        model.addBoolOr(near.toArray(new Literal[0]));
    }

    private static long nano(double metres) {
        return Math.round(metres * NANOMETRES);
    }

    /**
     * Asks the solver.
     *
     * @param seconds after which it gives up
     * @param workers threads
     * @return its answer
     */
    Answer solve(double seconds, int workers) {
        CpSolver solver = new CpSolver();
        solver.getParameters()
                .setMaxTimeInSeconds(seconds)
                .setNumSearchWorkers(workers)
                .setRandomSeed(1)
                .setUseEnergeticReasoningInNoOverlap2D(true)
                .setUsePairwiseReasoningInNoOverlap2D(true);
        if (Boolean.getBoolean("cpsat.log")) {
            solver.getParameters().setLogSearchProgress(true);
        }
        CpSolverStatus status = solver.solve(model);
        Optional<LatticeRoute> found = Optional.empty();
        if (status == CpSolverStatus.FEASIBLE || status == CpSolverStatus.OPTIMAL) {
            found = Optional.of(route(solver));
        }
        return new Answer(status, found, solver.wallTime());
    }

    private LatticeRoute route(CpSolver solver) {
        int leads = 0;
        for (int run = 0; run < first; run++) {
            leads += solver.booleanValue(leadPresent[run]) ? 1 : 0;
        }
        int begin = first - leads;
        return new LatticeRoute(
                room,
                leads,
                IntStream.rangeClosed(begin, runs)
                        .map(c -> (int) solver.value(xs[c]))
                        .toArray(),
                IntStream.rangeClosed(begin, runs)
                        .map(c -> (int) solver.value(ys[c]))
                        .toArray());
    }
}
