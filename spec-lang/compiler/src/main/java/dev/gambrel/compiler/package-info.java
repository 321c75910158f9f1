/** The compiler: a specification in text becomes a cut tree, or findings that say why not. */
package dev.gambrel.compiler;
