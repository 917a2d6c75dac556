package noctuary.journal;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Optional;
import noctuary.entry.Journal;
import noctuary.entry.Site;
import noctuary.entry.Slug;
import noctuary.fits.FrameHeader;
import noctuary.sky.Catalogue;
import noctuary.sky.Night;

/** One frame by its header: target and night as they will name the entry. */
record SeenFrame(Path path, FrameHeader header, Optional<String> target, Optional<LocalDate> night) {
    static SeenFrame of(Path path, FrameHeader header, Journal journal) {
        ZoneId zone = journal.settings()
                .site()
                .map(journal.sites()::get)
                .flatMap(Site::zone)
                .orElse(ZoneOffset.UTC);
        return new SeenFrame(
                path,
                header,
                header.object().map(o -> Catalogue.canonicalName(o.value())),
                header.taken().map(t -> Night.of(t.value(), zone)));
    }

    String slug() {
        String name = target.map(Slug::lowerCase).filter(s -> !s.isEmpty()).orElse("unnamed");
        return night.map(n -> n + "-" + name).orElse(name);
    }
}
