/** Files: specifications and trees as they are read, and whatever is written. */
package dev.gambrel.cli.file;
