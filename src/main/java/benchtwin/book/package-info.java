/**
 * The workshop's record in one file: things (parts, clubs, players, gauges, jobs), the events that befell them, the
 * readings taken of them and notes. Entries are only ever added; how a thing stands is worked out from its events and kept
 * beside them. What the names of facts and quantities mean is left to others.
 */
package benchtwin.book;
