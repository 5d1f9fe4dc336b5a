/** What is wrong with a definition, where in the file, and how to mend it. */
package org.baywright.model.problem;
