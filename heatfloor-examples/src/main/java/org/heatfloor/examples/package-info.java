/**
 * Runs the library on room files: reads and judges a room file, plans the floor, writes the plan file and the drawing and
 * prints a summary. Uses the library's public API only.
 */
@NullMarked
package org.heatfloor.examples;

import org.jspecify.annotations.NullMarked;
