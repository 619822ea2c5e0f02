package benchtwin.book;

/** How things stand, as the file keeps it beside their events. */
final class States {

    private States() {
    }

    static void put(Statements statements, Thing thing, State state) {
        statements.run("INSERT INTO state (thing_id, kind, standing, owner, derived) VALUES (?, ?, ?, ?, ?) "
            + "ON CONFLICT (thing_id) DO UPDATE SET standing = excluded.standing, owner = excluded.owner, "
            + "derived = excluded.derived", thing.id(), thing.kind().word(), state.standing().word(), owner(thing, state),
            StateJson.write(state));
    }

    /** Of all that have none. */
    static void putMissing(BookView view) {
        for (ThingKind kind : ThingKind.values()) {
            for (Thing thing : view.things(kind)) {
                if (view.statements().number("SELECT count(*) FROM state WHERE thing_id = ?", thing.id()) == 0) {
                    put(view.statements(), thing, Fold.of(kind, view.events(thing)));
                }
            }
        }
    }

    /** The player whose club or job it is. */
    static String owner(Thing thing, State state) {
        return thing.kind() == ThingKind.CLUB || thing.kind() == ThingKind.JOB ? state.fact("player").orElse(null) : null;
    }
}
