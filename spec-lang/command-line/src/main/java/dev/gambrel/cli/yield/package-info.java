/** {@code gambrel yield}: says what a carcass should give. */
package dev.gambrel.cli.yield;
