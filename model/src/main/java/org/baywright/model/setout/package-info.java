/** String lines, grid, levels and roof planes: the bones that the steel is hung on. */
package org.baywright.model.setout;
