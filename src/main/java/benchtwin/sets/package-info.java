/**
 * Plans many builds from one stock: which head and shaft each club of each set gets, so that every club is near its target,
 * clubs of a group are alike, and no part is used twice. Choosing parts is a constraint problem; the plan inside one club
 * comes from {@code match}. Reading targets, printing plans and what a club measures are left to others.
 */
package benchtwin.sets;
