package org.heatfloor.plan;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import org.heatfloor.routing.Effort;

/** The schoolhouse rooms planned once for all tests. */
final class SchoolPlans {

    private static final Map<String, Planned> KNOWN = new ConcurrentHashMap<>();

    private SchoolPlans() {}

    record Planned(Brief brief, Plan plan) {
        @Override
        public String toString() {
            return brief.name();
        }
    }

    static Planned washroom() {
        return planned("washroom", Schoolrooms::washroom);
    }

    static Planned bootRoom() {
        return planned("boot room", Schoolrooms::bootRoom);
    }

    static Planned kitchen() {
        return planned("kitchen", Schoolrooms::kitchen);
    }

    /** The washroom without temperatures, tile and mortar. */
    static Planned bare() {
        return planned("bare", () -> Schoolrooms.washroomFloor()
                .rules(Schoolrooms.washroomRules())
                .catalogue(Schoolrooms.washroomCatalogue())
                .build());
    }

    private static Planned planned(String name, Supplier<Brief> brief) {
        return KNOWN.computeIfAbsent(name, n -> {
            Brief given = brief.get();
            return new Planned(given, Planner.plan(given, Effort.QUICK));
        });
    }
}
