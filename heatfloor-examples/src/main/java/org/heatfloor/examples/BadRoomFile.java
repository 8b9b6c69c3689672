package org.heatfloor.examples;

import java.io.Serial;
import java.util.List;

/** A room file that cannot be used, with everything found wrong with it. */
final class BadRoomFile extends Exception {

    @Serial
    private static final long serialVersionUID = 1L;

    private final transient List<Fault> faults;

    BadRoomFile(List<Fault> faults) {
        super(faults.size() + " faults");
        this.faults = List.copyOf(faults);
    }

    BadRoomFile(String key, String read, String expected) {
        this(List.of(Fault.of(key, read, expected)));
    }

    List<Fault> faults() {
        return faults;
    }
}
