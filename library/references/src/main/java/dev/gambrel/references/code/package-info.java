/** What can be found about published numbers and codes, in words. */
package dev.gambrel.references.code;
