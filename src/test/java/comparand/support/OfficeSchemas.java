package comparand.support;

import static java.util.Objects.requireNonNull;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.MalformedURLException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

/**
 * The schemas of Office Open XML (ECMA-376, transitional), by which the parts of a file are checked. They are compiled into
 * a library that holds all of them; it is kept apart from the small set that the tool runs on.
 */
public final class OfficeSchemas {

    private static final ClassLoader ALL = loader();

    private OfficeSchemas() {}

    private static ClassLoader loader() {
        var schemas = Path.of(requireNonNull(System.getProperty("comparand.office.schemas")));
        var beans = org.apache.xmlbeans.XmlObject.class
                .getProtectionDomain()
                .getCodeSource()
                .getLocation();
        try {
            return new URLClassLoader(
                    new URL[] {schemas.toUri().toURL(), beans}, log4j(ClassLoader.getPlatformClassLoader()));
        } catch (MalformedURLException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The logging interface is the only thing that the beans need of the rest. */
    private static ClassLoader log4j(ClassLoader platform) {
        var here = OfficeSchemas.class.getClassLoader();
        return new ClassLoader(platform) {
            @Override
            protected Class<?> findClass(String name) throws ClassNotFoundException {
                if (name.startsWith("org.apache.logging.")) {
                    return here.loadClass(name);
                }
                throw new ClassNotFoundException(name);
            }
        };
    }

    /** What is wrong with the parts of a file, each with its part: nothing, if it holds to the schemas. */
    public static List<String> faults(Path file) throws IOException {
        var faults = new ArrayList<String>();
        int checked = 0;
        try (var zip = new ZipFile(file.toFile())) {
            for (var entry : zip.stream().filter(OfficeSchemas::isPart).toList()) {
                try (var in = zip.getInputStream(entry)) {
                    var found = faults(in);
                    found.forEach(f -> faults.add(entry.getName() + ": " + f));
                    checked++;
                }
            }
        }
        if (checked == 0) {
            faults.add("no part was checked");
        }
        return faults;
    }

    private static boolean isPart(ZipEntry entry) {
        return entry.getName().matches("(word|xl|ppt)/.*\\.xml");
    }

    /** The faults of one part: those of its content, or that its root is no element of the schemas. */
    static List<String> faults(InputStream part) {
        try {
            var type = ALL.loadClass("org.apache.xmlbeans.XmlObject");
            var options = ALL.loadClass("org.apache.xmlbeans.XmlOptions");
            var withErrors = options.getConstructor().newInstance();
            var errors = new ArrayList<Object>();
            options.getMethod("setErrorListener", java.util.Collection.class).invoke(withErrors, errors);
            var kind = ALL.loadClass("org.apache.xmlbeans.SchemaType");
            var schemas = ALL.loadClass("org.apache.poi.schemas.ooxml.system.ooxml.TypeSystemHolder")
                    .getField("typeSystem")
                    .get(null);
            var parsed = ALL.loadClass("org.apache.xmlbeans.SchemaTypeLoader")
                    .getMethod("parse", InputStream.class, kind, options)
                    .invoke(schemas, part, null, withErrors);
            boolean known = (boolean) kind.getMethod("isDocumentType")
                    .invoke(type.getMethod("schemaType").invoke(parsed));
            if (!known) {
                return List.of("its root is not known to the schemas");
            }
            type.getMethod("validate", options).invoke(parsed, withErrors);
            return errors.stream().map(Object::toString).toList();
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }
}
