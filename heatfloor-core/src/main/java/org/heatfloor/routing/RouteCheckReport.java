package org.heatfloor.routing;

import java.util.List;
import org.heatfloor.finding.Finding;

/**
 * The result of the independent check of a drawing with one or more cables.
 *
 * @param cables one result a cable, in the order given
 */
public record RouteCheckReport(List<CableCheck> cables) {

    /**
     * Copies the list.
     *
     * @param cables one result a cable, in the order given
     * @throws NullPointerException if a cable is missing
     */
    public RouteCheckReport {
        cables = List.copyOf(cables);
    }

    /**
     * Every finding of every cable.
     *
     * @return the findings in the order of the cables
     */
    public List<Finding> findings() {
        return cables.stream().flatMap(cable -> cable.findings().stream()).toList();
    }

    /**
     * Whether nothing forbids laying the cables so.
     *
     * @return true when no finding is an error
     */
    public boolean passes() {
        return cables.stream().allMatch(CableCheck::passes);
    }
}
