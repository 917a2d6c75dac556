package noctuary.site;

import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import noctuary.advice.Advice;
import noctuary.entry.Site;
import noctuary.entry.Typed;
import noctuary.keep.Memo;
import noctuary.measure.EntrySheet;
import noctuary.measure.RigSheet;
import noctuary.measure.TargetSheet;
import noctuary.measure.VersionSheet;
import noctuary.site.page.Link;

/** The content with its cross-references: which target an entry belongs to, what its rig and site are called. */
final class Ledger {
    private final SiteContent content;
    private final Memo memo;
    private final Discretion discretion;
    private final Map<String, EntrySheet> bySlug = new LinkedHashMap<>();
    private final Map<String, TargetSheet> targetOf = new HashMap<>();

    Ledger(SiteContent content) {
        this(content, Memo.NONE);
    }

    /** @param memo keeps what takes long to work out */
    Ledger(SiteContent content, Memo memo) {
        this.content = content;
        this.memo = memo;
        this.discretion = new Discretion(content.journal());
        content.entries().forEach(sheet -> bySlug.put(sheet.entry().slug(), sheet));
        content.targets().forEach(target -> target.attempts().forEach(attempt -> targetOf.put(attempt.slug(), target)));
    }

    Memo memo() {
        return memo;
    }

    SiteContent content() {
        return content;
    }

    Discretion discretion() {
        return discretion;
    }

    Advice advice() {
        return content.advice();
    }

    Optional<EntrySheet> entry(String slug) {
        return Optional.ofNullable(bySlug.get(slug));
    }

    List<EntrySheet> entries(List<String> slugs) {
        return slugs.stream().flatMap(slug -> entry(slug).stream()).toList();
    }

    Optional<RigSheet> rig(EntrySheet sheet) {
        return sheet.entry().rig().map(Typed::value).map(content.rigs()::get);
    }

    Optional<Site> site(EntrySheet sheet) {
        return sheet.entry().site().map(Typed::value).map(content.journal().sites()::get);
    }

    String siteName(EntrySheet sheet) {
        return site(sheet).map(Site::name).orElse("");
    }

    String rigName(EntrySheet sheet) {
        return rig(sheet).map(rig -> rig.note().name().value()).orElse("");
    }

    String targetName(EntrySheet sheet) {
        return target(sheet).map(TargetSheet::name).or(sheet.target()::value).orElse("");
    }

    Optional<TargetSheet> target(EntrySheet sheet) {
        return Optional.ofNullable(targetOf.get(sheet.entry().slug()));
    }

    Link entryLink(Address from, EntrySheet sheet) {
        return Link.of(
                sheet.entry().title().value(),
                from.to(Address.entry(sheet.entry().slug())));
    }

    Link targetLink(Address from, EntrySheet sheet) {
        return target(sheet)
                .map(target -> Link.of(target.name(), from.to(Address.target(target.id()))))
                .orElse(Link.plain(targetName(sheet)));
    }

    Link rigLink(Address from, EntrySheet sheet) {
        return rig(sheet)
                .map(rig -> Link.of(
                        rig.note().name().value(),
                        from.to(Address.rig(rig.note().id()))))
                .orElse(Link.plain(""));
    }

    Map<String, SiteContent.Picture> pictures(EntrySheet sheet) {
        return content.pictures().getOrDefault(sheet.entry().slug(), Map.of());
    }

    /** Its attempts on one grid, where there are two or more that can be shown. */
    Optional<SiteContent.Sky> sky(TargetSheet target) {
        return Optional.ofNullable(content.skies().get(target.id()));
    }

    /** Why pictures of the note cannot be shown on its page, by the reference that the page makes. */
    Map<String, String> unshown(Address page) {
        String folder = page.path().substring(0, page.path().lastIndexOf('/') + 1);
        Map<String, String> reasons = new TreeMap<>();
        content.unshown().forEach((path, why) -> {
            if (path.startsWith(folder)) {
                reasons.put(path.substring(folder.length()), why);
            }
        });
        return reasons;
    }

    /** In the order of the note; empty where nothing was compared. */
    List<VersionSheet> versions(EntrySheet sheet) {
        return content.versions().getOrDefault(sheet.entry().slug(), List.of());
    }

    /** As a reader looks for them. */
    List<TargetSheet> targets() {
        return content.targets().stream()
                .sorted(Comparator.comparing(TargetSheet::name, ByName.ORDER))
                .toList();
    }

    /** Names without repetition, in alphabetical order. */
    static List<String> distinct(List<String> names) {
        return names.stream()
                .filter(name -> !name.isEmpty())
                .distinct()
                .sorted(ByName.ORDER)
                .collect(Collectors.toList());
    }
}
