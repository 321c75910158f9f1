/** How the shares of cuts move from cutting test to cutting test. */
package dev.gambrel.cli.drift;
