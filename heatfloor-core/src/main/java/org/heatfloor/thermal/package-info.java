/**
 * Will the floor be warm, even and safe, and when: build-up, surface laws, the temperature of one cable section and of
 * the whole floor as laid, heat-up, energy, comfort and limits.
 *
 * <p>Geometry comes in as quantities, or as plain coordinates with their unit. Absolute temperatures and temperature differences are different
 * types. Everything assumes layers without gaps, conductivities that do not depend on temperature, and a floor that
 * loses no heat through its edges.
 */
@NullMarked
package org.heatfloor.thermal;

import org.jspecify.annotations.NullMarked;
