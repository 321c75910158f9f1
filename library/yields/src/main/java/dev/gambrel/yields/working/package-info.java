/** How the carcasses of a run are worked: which way each cut goes, chosen, shared or by its conditions. */
package dev.gambrel.yields.working;
