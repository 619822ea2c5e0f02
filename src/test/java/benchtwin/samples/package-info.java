/**
 * The invented sample workshop in {@code inventory-samples} and the seeded generator that wrote it, and stock of any size
 * and whole events for benchmarks and property tests. Every model and player is made up. Nominal lofts, lies, masses and lengths are common
 * practice, no source; scatter is memory.
 */
package benchtwin.samples;
