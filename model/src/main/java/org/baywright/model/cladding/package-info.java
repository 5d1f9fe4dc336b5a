/** Sheets, flashings, gutters and downpipes: what closes the building, each on the plane it lies in. */
package org.baywright.model.cladding;
