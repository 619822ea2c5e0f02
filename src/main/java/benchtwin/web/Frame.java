package benchtwin.web;

import java.util.List;

/**
 * What stands around every page.
 * @param title   of the page
 * @param section which entry of the navigation it belongs to
 * @param token   goes back with every form, so that no other site can post one
 * @param theme   light, dark, or empty for what the system prefers
 * @param path    of this page
 * @param standing how the browser stands to the pages; a stranger's has no ways to others
 * @param who     who enters, if they said so
 * @param said    what is to be told of the last entry
 */
public record Frame(String title, Section section, String token, String theme, String path, Standing standing, String who,
                    List<String> said) {
}
