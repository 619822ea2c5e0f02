/**
 * The statistics of a workshop's gauges: how well one repeats, how two differ, what offsets between pairs say of all of
 * them together, and whether two readings differ by more than measuring explains. Pure functions on readings and
 * records: no files, clock or randomness. Where readings are kept, and what was accepted, others know.
 *
 * <p>One sign holds throughout: the offset of gauge A relative to gauge R is what A reads minus what R reads of the same
 * thing. A reading on A is carried to R by subtracting it.
 */
package benchtwin.gauge;
