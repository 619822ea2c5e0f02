package benchtwin.book;

import org.jdbi.v3.core.Handle;

/** How things stand, as the file keeps it beside their events. */
final class States {

    private States() {
    }

    static void put(Handle handle, Thing thing, State state) {
        handle.createUpdate("INSERT INTO state (thing_id, kind, standing, owner, derived) VALUES (:id, :kind, :standing, :owner, "
                + ":derived) ON CONFLICT (thing_id) DO UPDATE SET standing = :standing, owner = :owner, derived = :derived")
            .bind("id", thing.id()).bind("kind", thing.kind().word()).bind("standing", state.standing().word())
            .bind("owner", owner(thing, state)).bind("derived", StateJson.write(state)).execute();
    }

    /** The player whose club or job it is. */
    static String owner(Thing thing, State state) {
        return thing.kind() == ThingKind.CLUB || thing.kind() == ThingKind.JOB ? state.fact("player").orElse(null) : null;
    }
}
