/** The program {@code gambrel}: its start, and the list of its verbs. Each verb has a package of its name. */
package dev.gambrel.cli;
