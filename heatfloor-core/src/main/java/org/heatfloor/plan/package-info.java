/**
 * The whole job: a {@link org.heatfloor.plan.Brief} goes in, one {@link org.heatfloor.plan.Plan} comes out. The cable is
 * chosen by one rule: of the cables that work and cover the heat loss the shortest; where none covers it the longest that
 * works, with a finding. No plan leaves without the independent route check.
 */
@NullMarked
package org.heatfloor.plan;

import org.jspecify.annotations.NullMarked;
