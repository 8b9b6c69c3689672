package org.heatfloor.examples;

import java.util.ArrayList;
import java.util.List;

/** Gathers the faults of one file, so that all are told at once. */
final class Faults {

    private static final int MOST = 100;

    private final List<Fault> found = new ArrayList<>();
    private int count;

    void add(String key, String read, String expected) {
        add(Fault.of(key, read, expected));
    }

    void add(Fault fault) {
        count++;
        if (found.size() < MOST) {
            found.add(fault);
        }
    }

    int count() {
        return count;
    }

    /** At most a hundred; a file with more has one cause. */
    List<Fault> found() {
        return List.copyOf(found);
    }
}
