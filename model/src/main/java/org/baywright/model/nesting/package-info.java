/**
 * How the members of a shed are laid in stock bars with their mitred ends: which turns of a piece the section allows,
 * where pieces share a cut, and the bars to buy. Saw plane: x along the bar, y across it in the plane that the blade
 * swivels in, from −depth/2 to depth/2.
 */
package org.baywright.model.nesting;
