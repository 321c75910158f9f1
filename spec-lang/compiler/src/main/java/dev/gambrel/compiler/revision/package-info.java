/** A specification that revises another: its lines are laid over those of the other before anything is made of them. */
package dev.gambrel.compiler.revision;
