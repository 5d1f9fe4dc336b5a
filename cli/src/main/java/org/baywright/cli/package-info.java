/** Commands: what was typed, what it means, the work. Each is a few lines over the model and the writers. */
package org.baywright.cli;
