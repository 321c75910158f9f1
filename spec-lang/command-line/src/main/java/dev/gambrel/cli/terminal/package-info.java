/** Where the program prints, how findings look there, and how it ends. */
package dev.gambrel.cli.terminal;
