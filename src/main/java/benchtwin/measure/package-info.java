/**
 * What a measured value is: a number with its standard uncertainty and where it came from, and the units it is
 * written in at the edges. Uses the JDK only; knows nothing of clubs.
 */
package benchtwin.measure;
