/** Cable, supply, resistance band, circuit, protection, voltage drop, meter tests and sensors. */
@NullMarked
package org.heatfloor.electrical;

import org.jspecify.annotations.NullMarked;
