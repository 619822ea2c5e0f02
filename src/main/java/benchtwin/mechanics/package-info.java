/**
 * What a club measures, from what it is made of: angles after a hosel tilt, lengths, balance, inertia, frequency and
 * torque. Pure functions on numbers and immutable records: no files, clock or randomness.
 *
 * <h2>Axes and signs</h2>
 * Right-handed frame on the soled head: <b>X</b> toward the target, <b>Y</b> from the toe toward the player, <b>Z</b> up.
 * G is the point where the shaft axis meets the ground. Shaft axis from G to the butt: a = (0, cos lie, sin lie). Face
 * normal: n = (cos loft · cos face, −cos loft · sin face, sin loft). Open, upright, weak, forward (butt toward the
 * target) and bounce are positive. A left-handed head has the same numbers, mirrored.
 *
 * <p>Along the shaft, x starts at the butt end of the grip cap and grows toward the head; z starts at the tip of the raw
 * shaft and grows toward the butt. Lengths are mm, masses g, angles degrees; radians and metres live only inside a
 * formula that needs them.
 */
package benchtwin.mechanics;
