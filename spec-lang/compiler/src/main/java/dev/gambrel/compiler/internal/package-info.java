/** What stands behind the generated grammar classes; nothing of it leaves the parser. */
package dev.gambrel.compiler.internal;
