package noctuary.journal;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import noctuary.entry.Entry;
import noctuary.measure.EntrySheet;
import noctuary.measure.ShownFile;
import noctuary.measure.TargetSheet;
import noctuary.site.Abreast;
import noctuary.site.Draft;
import noctuary.site.SiteContent.Picture;
import noctuary.site.SiteContent.Sky;

/**
 * The pictures of a site, put where its pages look for them.
 *
 * @param entries by slug, then by name
 * @param skies by target
 */
record SitePictures(Map<String, Map<String, Picture>> entries, Map<String, Sky> skies) {

    /** @param cache in which pictures are kept */
    static SitePictures put(Gathering gathered, Path cache, Draft draft, Progress progress) throws IOException {
        return new SitePictures(
                entries(gathered, new PictureShelf(cache, draft, gathered.files()), progress),
                skies(gathered, new SameSky(cache, draft, gathered.files(), gathered.memo()), progress));
    }

    private static Map<String, Map<String, Picture>> entries(Gathering gathered, PictureShelf shelf, Progress progress)
            throws IOException {
        Map<String, Map<String, Picture>> all = new ConcurrentHashMap<>();
        List<Abreast.Job> jobs = new ArrayList<>();
        AtomicInteger done = new AtomicInteger();
        for (EntrySheet sheet : gathered.entries()) {
            jobs.add(() -> {
                all.put(sheet.entry().slug(), pictures(sheet, shelf));
                progress.at(
                        "drawing", done.incrementAndGet(), gathered.entries().size());
            });
        }
        Abreast.run(jobs);
        return all;
    }

    private static Map<String, Picture> pictures(EntrySheet sheet, PictureShelf shelf) throws IOException {
        Map<String, Picture> pictures = new LinkedHashMap<>();
        Entry entry = sheet.entry();
        String folder = "entries/" + entry.slug();
        if (sheet.shownFile().isPresent()) {
            ShownFile shown = sheet.shownFile().get();
            put(
                    pictures,
                    "stack",
                    shown.content().isEmpty()
                            ? shelf.show(shown.path(), folder, "stack")
                            : shelf.show(shown.path(), shown.content(), folder, "stack"));
        }
        int n = 0;
        for (Entry.Version version : entry.versions()) {
            n++;
            if (version.image().isPresent()) {
                put(pictures, version.name(), shelf.show(version.image().get(), folder, "version-" + n));
            }
        }
        return pictures;
    }

    private static Map<String, Sky> skies(Gathering gathered, SameSky sameSky, Progress progress) throws IOException {
        Map<String, EntrySheet> entries = new LinkedHashMap<>();
        gathered.entries().forEach(sheet -> entries.put(sheet.entry().slug(), sheet));
        Map<String, Sky> skies = new ConcurrentHashMap<>();
        List<Abreast.Job> jobs = new ArrayList<>();
        AtomicInteger done = new AtomicInteger();
        for (TargetSheet target : gathered.targets()) {
            jobs.add(() -> {
                sameSky.of(target, entries).ifPresent(sky -> skies.put(target.id(), sky));
                progress.at(
                        "laying attempts on each other",
                        done.incrementAndGet(),
                        gathered.targets().size());
            });
        }
        Abreast.run(jobs);
        return skies;
    }

    private static void put(Map<String, Picture> pictures, String name, Optional<Picture> picture) {
        picture.ifPresent(p -> pictures.put(name, p));
    }
}
