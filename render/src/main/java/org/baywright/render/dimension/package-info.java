/**
 * What annotates a view on paper: dimensions, levels, pitches, grid bubbles, labels on leaders, tables and notes, laid
 * out so that no text lies on another. Model points come in as view coordinates, marks go out in paper millimetres.
 */
package org.baywright.render.dimension;
