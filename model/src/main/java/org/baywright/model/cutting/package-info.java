/**
 * Which stock lengths to buy and how to cut each bar: the one-dimensional cutting-stock problem, solved to proven
 * optimality where time allows. Knows pieces, bars and a saw; nothing of sheds.
 */
package org.baywright.model.cutting;
