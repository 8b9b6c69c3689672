/**
 * The electrical side of a heated floor: what a cable's label implies, what the meter should read and what a reading
 * points to, and the circuit that feeds it, each figure with the clause it rests on.
 *
 * <p>Words: the <em>cold lead</em> (American: nonheating lead) joins the heating part to its box; the <em>screen</em> is
 * the earthed braid or sheath; a <em>residual current device</em> is a ground-fault circuit interrupter in American usage.
 * A code is a value with an edition, {@link org.heatfloor.electrical.ElectricalCode}; a limit that an edition dropped is
 * not applied to it.
 *
 * <p>This is a design aid. Mains work in wet rooms belongs to licensed electricians; the code in force, the listing and
 * the cable's instructions go before every figure here.
 */
@NullMarked
package org.heatfloor.electrical;

import org.jspecify.annotations.NullMarked;
