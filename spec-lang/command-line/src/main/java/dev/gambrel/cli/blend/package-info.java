/** The verb that blends tubs of trim. */
package dev.gambrel.cli.blend;
