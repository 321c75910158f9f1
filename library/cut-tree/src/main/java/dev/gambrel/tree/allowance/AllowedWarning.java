package dev.gambrel.tree.allowance;

import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.tree.Allowance;

/**
 * A warning that is not listed, because the house accepts it.
 *
 * @param finding the warning
 * @param allowance what accepts it, and why
 */
public record AllowedWarning(Diagnostic finding, Allowance allowance) {}
