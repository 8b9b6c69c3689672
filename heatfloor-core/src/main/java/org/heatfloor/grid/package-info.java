/** The stud lattice of the uncoupling membrane and the channels between its studs. */
@NullMarked
package org.heatfloor.grid;

import org.jspecify.annotations.NullMarked;
