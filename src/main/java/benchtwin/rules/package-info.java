/**
 * A club against the published equipment limits: what each limit is, what a club is held against it by, and how clearly it
 * keeps it. Advice only; it decides nothing and knows neither files nor the book.
 */
package benchtwin.rules;
