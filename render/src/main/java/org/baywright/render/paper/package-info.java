/** Sheet sizes, preferred scales and pens. */
package org.baywright.render.paper;
