/** The program {@code gambrel}: verbs, arguments, and what is printed. */
package dev.gambrel.cli;
