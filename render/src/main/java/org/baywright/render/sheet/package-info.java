/** Sheets: frame, title block, placed views and schedules; the drawing sets. */
package org.baywright.render.sheet;
