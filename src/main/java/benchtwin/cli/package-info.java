/** The command line: options, printing and exit codes. Computes nothing. */
package benchtwin.cli;
