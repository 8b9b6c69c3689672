/** The cable's route over the stud lattice, its independent check, and the places of the sensors. */
@NullMarked
package org.heatfloor.routing;

import org.jspecify.annotations.NullMarked;
