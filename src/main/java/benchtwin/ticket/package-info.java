/**
 * What goes to the bench on paper: the ticket of a job, and labels.
 *
 * <p>A plain record says what is on the page; a template ({@code src/main/jte/ticket}) lays it out as XHTML, which is the HTML
 * file as it stands and is printed as PDF. What is on it is filled in by {@code bench}; nothing here knows of the book, computes
 * what a club measures, or writes a file.
 */
package benchtwin.ticket;
