/** Build-up, surface laws, section and whole-floor temperature, heat-up, energy and limits. */
@NullMarked
package org.heatfloor.thermal;

import org.jspecify.annotations.NullMarked;
