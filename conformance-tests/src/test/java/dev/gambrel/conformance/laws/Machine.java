package dev.gambrel.conformance.laws;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.MalformedURLException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** The compiler in a class loader of its own, which tells what it had to load. */
final class Machine implements AutoCloseable {
    private final Set<String> loaded = new HashSet<>();
    private final URLClassLoader classes = new URLClassLoader(classPath(), ClassLoader.getPlatformClassLoader()) {
        @Override
        protected Class<?> findClass(String name) throws ClassNotFoundException {
            loaded.add(name);
            return super.findClass(name);
        }
    };

    private static URL[] classPath() {
        return Stream.of(System.getProperty("java.class.path").split(File.pathSeparator))
                .map(Machine::url)
                .toArray(URL[]::new);
    }

    private static URL url(String entry) {
        try {
            return Path.of(entry).toUri().toURL();
        } catch (MalformedURLException odd) {
            throw new UncheckedIOException(odd);
        }
    }

    /** How much is found in a text. */
    int findings(String text) throws ReflectiveOperationException {
        Class<?> compiler = classes.loadClass("dev.gambrel.compiler.SpecCompiler");
        Class<?> source = classes.loadClass("dev.gambrel.text.SourceText");
        Class<?> sources = classes.loadClass("dev.gambrel.compiler.source.Sources");
        Object none = sources.getMethod("none").invoke(null);
        Object asked = source.getConstructor(String.class, String.class).newInstance("hogget.cuts", text);
        Object result = compiler.getMethod("compile", source, sources)
                .invoke(compiler.getConstructor().newInstance(), asked, none);
        return ((List<?>) result.getClass().getMethod("diagnostics").invoke(result)).size();
    }

    boolean hasLoaded(String name) {
        return loaded.contains(name);
    }

    @Override
    public void close() throws IOException {
        classes.close();
    }
}
