package noctuary.site;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import noctuary.entry.Entry;
import noctuary.measure.EntrySheet;
import noctuary.site.SiteContent.Picture;
import noctuary.site.SiteContent.Size;
import noctuary.site.page.Markup;
import noctuary.site.page.Plate;

/** Pictures as placed on a page. */
final class Plates {
    static final String STACK = "stack";
    private static final int MIDDLING = 900;

    private final Ledger ledger;
    private final Address page;

    Plates(Ledger ledger, Address page) {
        this.ledger = ledger;
        this.page = page;
    }

    /** The name of the picture that stands for an entry: its last version that has one, else the stack. */
    Optional<String> face(EntrySheet sheet) {
        Map<String, Picture> pictures = ledger.pictures(sheet);
        List<Entry.Version> versions = sheet.entry().versions();
        for (int i = versions.size() - 1; i >= 0; i--) {
            if (pictures.containsKey(versions.get(i).name())) {
                return Optional.of(versions.get(i).name());
            }
        }
        return pictures.containsKey(STACK) ? Optional.of(STACK) : Optional.empty();
    }

    /** The face of an entry, or null. */
    Plate ofFace(EntrySheet sheet) {
        return face(sheet).map(name -> plate(sheet, name, Markup.NONE)).orElse(null);
    }

    /** A named picture of an entry, or null. */
    Plate plate(EntrySheet sheet, String name, Markup overlay) {
        Picture picture = ledger.pictures(sheet).get(name);
        if (picture == null || picture.sizes().isEmpty()) {
            return null;
        }
        List<Size> sizes = picture.sizes();
        Size full = sizes.get(sizes.size() - 1);
        Size shown =
                sizes.stream().filter(s -> s.width() >= MIDDLING).findFirst().orElse(full);
        String srcset = sizes.stream()
                .map(s -> page.to(s.path()) + " " + s.width() + "w")
                .collect(Collectors.joining(", "));
        return new Plate(
                page.to(shown.path()),
                srcset,
                shown.width(),
                shown.height(),
                alternative(sheet, name),
                page.to(full.path()),
                overlay,
                SkyParts.deep(page, picture));
    }

    String alternative(EntrySheet sheet, String name) {
        String what = name.equals(STACK) ? "linear, stretched for viewing" : "version " + name;
        String target = ledger.targetName(sheet);
        return (target.isEmpty() ? sheet.entry().title().value() : target) + ", " + what;
    }
}
