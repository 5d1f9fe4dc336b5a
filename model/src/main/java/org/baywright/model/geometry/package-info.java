/**
 * Positions, planes and swept solids. No steel words here: a solid does not know whether it is a column or a plate.
 */
package org.baywright.model.geometry;
