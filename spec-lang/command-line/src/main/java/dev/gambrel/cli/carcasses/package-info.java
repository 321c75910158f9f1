/** The verb that works out a file of carcasses. */
package dev.gambrel.cli.carcasses;
