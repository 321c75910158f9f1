/** The verb that says whether cutting tests add up. */
package dev.gambrel.cli.balance;
