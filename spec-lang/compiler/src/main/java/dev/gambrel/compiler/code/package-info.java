/** What the compiler can find: codes and wording. */
package dev.gambrel.compiler.code;
