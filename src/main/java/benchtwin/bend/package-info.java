/**
 * What a hosel or a sleeve can still do, how much of a bend springs back, and what to ask of the next one. Angles themselves
 * are the mechanics' matter; who bends, and where it is written down, is left to others.
 */
package benchtwin.bend;
