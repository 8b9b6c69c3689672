/** The whole job: a brief goes in, one plan with its findings comes out. */
@NullMarked
package org.heatfloor.plan;

import org.jspecify.annotations.NullMarked;
