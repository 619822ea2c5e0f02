/** What a hosel or a sleeve can still do. Angles themselves are the mechanics' matter. */
package benchtwin.bend;
