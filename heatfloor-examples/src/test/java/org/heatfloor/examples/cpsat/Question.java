package org.heatfloor.examples.cpsat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.heatfloor.examples.LatticeRoute;
import org.heatfloor.examples.SmallRoom;

/**
 * The fewest turns of a small room: the number of turns is raised until the solver finds a route, and what it refutes on the
 * way is proved.
 */
final class Question {

    /** Cold junctions that a found route adds to the question at once. */
    private static final int ADDED = 6;

    private final SmallRoom room;
    private final boolean even;
    private final double secondsEach;
    private final int workers;
    private final double reach;
    private final List<int[]> warm = new ArrayList<>();
    private double seconds;

    /**
     * A question.
     *
     * @param room the floor and its cable
     * @param even whether no junction may lie farther than the even spacing from the cable
     * @param secondsEach after which one number of turns is given up
     * @param workers threads of the solver
     */
    Question(SmallRoom room, boolean even, double secondsEach, int workers) {
        this.room = room;
        this.even = even;
        this.secondsEach = secondsEach;
        this.workers = workers;
        reach = room.evenSpacing() / room.pitch();
    }

    /**
     * The answer.
     *
     * @param bound no route has fewer turns; proved
     * @param route one with the fewest turns found
     * @param seconds the solver's time in all
     */
    record Result(int bound, LatticeRoute route, double seconds) {}

    /** Raises the turns from a number that is known to be no more than the fewest. */
    Result answer(int from) {
        int bound = -1;
        for (int turns = from; turns < 100; turns++) {
            boolean proved = true;
            for (boolean across : new boolean[] {false, true}) {
                FewestTurns.Answer answer = ask(turns, across);
                if (answer.route().isPresent()) {
                    return new Result(bound < 0 ? turns : bound, answer.route().orElseThrow(), seconds);
                }
                proved &= answer.impossible();
            }
            if (!proved && bound < 0) {
                bound = turns;
            }
        }
        throw new IllegalStateException(room.name() + ": no route found");
    }

    /**
     * One number of turns. Junctions that a found route leaves cold are added to the question until none is left, or those
     * that are left were added before: the few beside joint and end that the model takes for heated.
     */
    FewestTurns.Answer ask(int turns, boolean across) {
        double left = secondsEach;
        while (true) {
            FewestTurns model = new FewestTurns(room, turns, across);
            warm.forEach(w -> model.warm(w[0], w[1], reach));
            FewestTurns.Answer answer = model.solve(left, workers);
            seconds += answer.seconds();
            left -= answer.seconds();
            if (!even || answer.route().isEmpty() || !addCold(answer.route().orElseThrow())) {
                return answer;
            }
            if (left <= 0) {
                return new FewestTurns.Answer(answer.status(), Optional.empty(), answer.seconds());
            }
        }
    }

    private boolean addCold(LatticeRoute route) {
        int before = warm.size();
        for (int[] cold : route.coldJunctions()) {
            boolean known = warm.subList(0, before).stream().anyMatch(w -> Arrays.equals(w, cold));
            boolean near = warm.subList(before, warm.size()).stream()
                    .anyMatch(w -> Math.hypot(w[0] - cold[0], w[1] - cold[1]) <= reach);
            if (!known && !near && warm.size() < before + ADDED) {
                warm.add(cold);
            }
        }
        return warm.size() > before;
    }
}
