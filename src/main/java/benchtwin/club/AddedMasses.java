package benchtwin.club;

/**
 * What a recorded club carries besides its parts. All 0 or more.
 * @param tapeLayers layers of tape under the grip
 * @param tipWeightG weight in the shaft's tip, g
 * @param tapeG      lead tape on the head, g
 * @param meltG      hot melt inside the head, g
 */
public record AddedMasses(double tapeLayers, double tipWeightG, double tapeG, double meltG) {

    /** Nothing recorded: one layer of tape under the grip, as grips are mounted. */
    public static final AddedMasses ONE_LAYER = new AddedMasses(1, 0, 0, 0);

    public AddedMasses {
        if (!(tapeLayers >= 0 && tipWeightG >= 0 && tapeG >= 0 && meltG >= 0)) {
            throw new IllegalArgumentException("added masses are 0 or more");
        }
    }
}
