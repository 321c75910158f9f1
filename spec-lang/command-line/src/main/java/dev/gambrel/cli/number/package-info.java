/** What a published number, a meat code or the element string of a label means. */
package dev.gambrel.cli.number;
