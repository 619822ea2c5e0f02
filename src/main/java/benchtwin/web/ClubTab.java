package benchtwin.web;

import java.util.List;

/**
 * What can be done with a club, each on a page of its own.
 * @param words what it is called
 * @param path  where it is
 */
public record ClubTab(String words, String path) {

    /**
     * All of them.
     * @param tag the club's tag
     * @return in order
     */
    public static List<ClubTab> all(String tag) {
        String club = "/clubs/" + FindPages.encoded(tag);
        return List.of(new ClubTab("Club", club), new ClubTab("Twin", club + "/twin"), new ClubTab("Shafts", club + "/shafts"),
            new ClubTab("Change", club + "/change"), new ClubTab("Rules", club + "/rules"));
    }
}
