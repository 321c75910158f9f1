package dev.gambrel.yields.control;

import java.util.ArrayList;
import java.util.List;

/**
 * Figures in the order of time with the limits that chance keeps to.
 *
 * @param level where the figure lies and how far it strays while nothing changes
 * @param points one for each test
 */
public record ControlChart(ProcessLevel level, List<ChartPoint> points) {
    /** Copies the list. */
    public ControlChart {
        points = List.copyOf(points);
    }

    /**
     * The points beyond their limits.
     *
     * @return in the order of time; none where chance explains all
     */
    public List<Signal> signals() {
        List<Signal> signals = new ArrayList<>();
        for (int i = 0; i < points.size(); i++) {
            ChartPoint point = points.get(i);
            if (point.plotted() > point.limits().high()) {
                signals.add(new Signal.Above(i, point.plotted(), point.limits().high()));
            } else if (point.plotted() < point.limits().low()) {
                signals.add(new Signal.Below(i, point.plotted(), point.limits().low()));
            }
        }
        return List.copyOf(signals);
    }
}
