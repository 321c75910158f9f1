/** The language: text in, a validated cut tree out; the formatter; the catalogue of species. */
@SuppressWarnings("requires-automatic") // ANTLR's runtime names its module in its manifest only
module dev.gambrel.compiler {
    requires transitive dev.gambrel.tree;
    requires org.antlr.antlr4.runtime;

    exports dev.gambrel.compiler;
    exports dev.gambrel.compiler.catalogue;
    exports dev.gambrel.compiler.code;
    exports dev.gambrel.compiler.format;
    exports dev.gambrel.compiler.origin;
    exports dev.gambrel.compiler.restate;
    exports dev.gambrel.compiler.source;
}
