/**
 * The plain records of the bench: heads, shafts, sleeves, grips, weights, recorded clubs; and what is wanted of a build,
 * what it is made of and what it will measure. They check themselves and compute nothing.
 */
package benchtwin.club;
