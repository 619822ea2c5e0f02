/**
 * The pages: what a browser asks is handed to the services of {@code bench}, and their records are filled into templates. Nothing
 * is computed here. Pages work without scripts; scripts only save a reload. What keeps strangers out is in {@code Guard}.
 */
package benchtwin.web;
