/**
 * A drawing as data: lines, arcs, fills and text on paper. Paper millimetres from the sheet's lower left corner, y up;
 * angles in degrees, anticlockwise from the right.
 */
package org.baywright.render.mark;
