/** Pictures as images of dots. The one room that loads the graphics of the JDK. */
package dev.gambrel.reports.png;
