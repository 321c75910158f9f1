/** Where each value of a tree is written, and what it rests on. */
package dev.gambrel.compiler.origin;
