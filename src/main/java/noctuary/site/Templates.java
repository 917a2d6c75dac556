package noctuary.site;

import freemarker.cache.ClassTemplateLoader;
import freemarker.cache.FileTemplateLoader;
import freemarker.cache.MultiTemplateLoader;
import freemarker.cache.TemplateLoader;
import freemarker.core.HTMLOutputFormat;
import freemarker.core.ParseException;
import freemarker.core.TemplateClassResolver;
import freemarker.template.Configuration;
import freemarker.template.DefaultObjectWrapper;
import freemarker.template.TemplateException;
import freemarker.template.TemplateExceptionHandler;
import freemarker.template.TemplateModel;
import freemarker.template.TemplateModelException;
import freemarker.template.Version;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.TimeZone;
import java.util.stream.Stream;
import noctuary.site.page.Markup;

/** Our templates, each replaceable by a file of the same name in the keeper's folder; none can run anything. */
final class Templates {
    static final String FOLDER = "/site-templates";

    static {
        // The library would otherwise talk through whichever logger it finds on the class path.
        System.setProperty("org.freemarker.loggerLibrary", "none");
    }

    private static final Version VERSION = Configuration.VERSION_2_3_35;

    private final Configuration configuration = new Configuration(VERSION);
    /** A page each thread, and its room taken again for the next. */
    private final ThreadLocal<PageText> texts = ThreadLocal.withInitial(PageText::new);

    Templates(Path ownTemplates) throws IOException {
        configuration.setTemplateLoader(loader(ownTemplates));
        configuration.setObjectWrapper(new PageWrapper());
        configuration.setDefaultEncoding("UTF-8");
        configuration.setOutputEncoding("UTF-8");
        configuration.setLocale(Locale.ROOT);
        configuration.setTimeZone(TimeZone.getTimeZone("UTC"));
        configuration.setNumberFormat("c");
        configuration.setRecognizeStandardFileExtensions(true);
        configuration.setOutputFormat(HTMLOutputFormat.INSTANCE);
        configuration.setNewBuiltinClassResolver(TemplateClassResolver.ALLOWS_NOTHING_RESOLVER);
        configuration.setAPIBuiltinEnabled(false);
        configuration.setTemplateExceptionHandler(TemplateExceptionHandler.RETHROW_HANDLER);
        configuration.setLogTemplateExceptions(false);
        configuration.setWrapUncheckedExceptions(true);
        configuration.setLocalizedLookup(false);
        configuration.setTemplateUpdateDelayMilliseconds(Long.MAX_VALUE);
    }

    /**
     * The page that a template makes of a model, which it sees as {@code page}, in UTF-8.
     *
     * @throws TemplateFault when the template is wrong, naming template and line
     */
    ByteBuffer fill(String name, Record page) throws IOException {
        try {
            PageText text = texts.get();
            text.reset();
            configuration.getTemplate(name).process(Map.of("page", page), text);
            return text.page();
        } catch (ParseException e) {
            throw new TemplateFault(e.getTemplateName(), e.getLineNumber(), e.getEditorMessage(), e);
        } catch (TemplateException e) {
            String where = e.getTemplateSourceName() == null ? name : e.getTemplateSourceName();
            int line = e.getLineNumber() == null ? 0 : e.getLineNumber();
            throw new TemplateFault(where, line, e.getMessageWithoutStackTop(), e);
        }
    }

    private static TemplateLoader loader(Path own) throws IOException {
        TemplateLoader ours = new ClassTemplateLoader(Templates.class, FOLDER);
        if (own == null || !Files.isDirectory(own)) {
            return ours;
        }
        refuseLinksOut(own);
        return new MultiTemplateLoader(new TemplateLoader[] {new FileTemplateLoader(own.toFile()), ours});
    }

    /** A journal from elsewhere could show any file of this machine as a style sheet. */
    private static void refuseLinksOut(Path own) throws IOException {
        Path bounds = own.toRealPath();
        try (Stream<Path> all = Files.walk(own)) {
            for (Path file : all.filter(Files::exists).toList()) {
                if (!file.toRealPath().startsWith(bounds)) {
                    throw new IOException(file + " is a link that leads out of its folder; copy the file there");
                }
            }
        }
    }

    /** Shows components of records, and prints {@link Markup} as it stands, so that no template switches escaping off. */
    private static final class PageWrapper extends DefaultObjectWrapper {
        PageWrapper() {
            super(VERSION);
            setExposureLevel(EXPOSE_NOTHING);
        }

        @Override
        public TemplateModel wrap(Object object) throws TemplateModelException {
            if (object instanceof Markup markup) {
                return HTMLOutputFormat.INSTANCE.fromMarkup(markup.html());
            }
            return object instanceof Record values ? new RecordModel(values, this) : super.wrap(object);
        }
    }
}
