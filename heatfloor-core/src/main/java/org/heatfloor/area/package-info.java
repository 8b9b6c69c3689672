/** Rooms as measured, places without cable, clearances, and what of the floor may be heated. */
@NullMarked
package org.heatfloor.area;

import org.jspecify.annotations.NullMarked;
