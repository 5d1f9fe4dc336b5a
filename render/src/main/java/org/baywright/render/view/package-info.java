/** Plan, elevation, section, pictorial and detail: solids seen from somewhere, hidden lines removed. */
package org.baywright.render.view;
