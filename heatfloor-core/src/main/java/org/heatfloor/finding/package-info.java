/**
 * Judgements as values: a limit met or broken is a {@link org.heatfloor.finding.Finding} with its severity, the figure,
 * the limit and the {@link org.heatfloor.finding.Source} the limit rests on. Exceptions are kept for misuse of the API.
 */
@NullMarked
package org.heatfloor.finding;

import org.jspecify.annotations.NullMarked;
