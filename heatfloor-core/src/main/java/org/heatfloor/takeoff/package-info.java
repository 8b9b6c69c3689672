/** Membrane, mortar, tile, grout, joints and heights: what to buy and how high the floor comes. */
@NullMarked
package org.heatfloor.takeoff;

import org.jspecify.annotations.NullMarked;
