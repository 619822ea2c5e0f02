/**
 * Finds the parts and the plan nearest a target: which parts fit at all, the best plan for each, their order, and the
 * chance of being right the first time. Exact searches only; whole sets are planned in {@code sets}.
 */
package benchtwin.match;
