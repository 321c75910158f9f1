/** A cutting test to look at: pictures as SVG and PNG, and a page to be printed. */
module dev.gambrel.reports {
    requires transitive dev.gambrel.batches;
    requires com.github.weisj.jsvg;
    requires java.desktop;
    requires java.xml;

    exports dev.gambrel.reports.markup;
    exports dev.gambrel.reports.page;
    exports dev.gambrel.reports.picture;
    exports dev.gambrel.reports.png;
    exports dev.gambrel.reports.svg;
}
