package org.heatfloor.takeoff;

/**
 * Steps of work a search may take, about a nanosecond each. Steps are counted and not timed, so that the same input always
 * gets the same answer.
 */
final class Work {

    /** Steps taken by a search and all its parts. */
    private static final class Count {
        private long taken;
    }

    private final Count count;
    private final long end;

    private Work(Count count, long end) {
        this.count = count;
        this.end = end;
    }

    Work(long steps) {
        this(new Count(), steps);
    }

    /** One of so many equal parts of what is left. What a part does not take stays with the whole. */
    Work part(int parts) {
        return new Work(count, count.taken + left() / Math.max(1, parts));
    }

    /** Takes steps, from the whole too. */
    void take(long steps) {
        count.taken += steps;
    }

    boolean isSpent() {
        return left() <= 0;
    }

    long left() {
        return end - count.taken;
    }
}
