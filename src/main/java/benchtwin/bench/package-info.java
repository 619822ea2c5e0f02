/** The jobs a technician asks for, joined from the parts below, once, for the command line and for the pages. */
package benchtwin.bench;
