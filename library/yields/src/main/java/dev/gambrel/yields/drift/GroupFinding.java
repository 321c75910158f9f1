package dev.gambrel.yields.drift;

import dev.gambrel.yields.control.GroupDifference;

/**
 * A cutter, a lot or a scale of whose tests a part is another share than of the others. It is no cause: they may have had other carcasses.
 *
 * @param part its line of the plan
 * @param common what the tests of the group have in common
 * @param difference how much more, in per cent of the cut
 */
public record GroupFinding(int part, LabelledTest.Common common, GroupDifference difference) {}
