/** New shares for a specification, put into its text so that nothing else changes. */
package dev.gambrel.compiler.restate;
