package noctuary.review;

import java.time.LocalDate;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import noctuary.measure.RigSheet;
import noctuary.review.Chronicle.Sides;

/**
 * Sites used for the first time after another. Before: the nights at the site used last; after: those at the new one;
 * both with the rigs, in the states, that were used at either. Later returns to a site are no change: their nights count
 * on that site's side. Nights whose rig differed in its spacing alone stand aside for what that leaves alone.
 */
final class SiteChanges {
    private final Chronicle chronicle;

    SiteChanges(Chronicle chronicle) {
        this.chronicle = chronicle;
    }

    List<Change> all() {
        return chronicle.nights().stream()
                .map(EntryNight::site)
                .filter(site -> !site.isEmpty())
                .distinct()
                .flatMap(site -> move(site).stream())
                .toList();
    }

    private Optional<Change> move(String site) {
        EntryNight first = chronicle.ofSite(site).get(0);
        return chronicle
                .lastBefore(first.night(), n -> !n.site().isEmpty() && !n.site().equals(site))
                .map(last -> between(
                        "site-" + site, Optional.of(first.night()), last.site(), site, sides(last.site(), site)));
    }

    Sides sides(String before, String after) {
        return Chronicle.alike(
                chronicle.ofSite(before),
                chronicle.ofSite(after),
                n -> List.of(n.rig(), n.state().map(RigSheet.State::from)));
    }

    Change between(String id, Optional<LocalDate> date, String before, String after, Sides sides) {
        Sides light = Chronicle.shared(
                chronicle.ofSite(before), chronicle.ofSite(after), n -> List.of(n.rig(), Parts.ofLight(n)));
        return new Change(
                id,
                ChangeKind.SITE,
                date,
                chronicle.siteName(after) + " instead of " + chronicle.siteName(before),
                Optional.empty(),
                side(before, sides.before(), light.before()),
                side(after, sides.after(), light.after()),
                date.isPresent() ? Changes.words(sides.after()) : List.of());
    }

    private Side side(String id, List<EntryNight> nights, List<EntryNight> light) {
        Set<EntryNight> taken = Collections.newSetFromMap(new IdentityHashMap<>());
        taken.addAll(nights);
        return new Side(
                id,
                chronicle.siteName(id),
                nights,
                light.stream().filter(n -> !taken.contains(n)).toList());
    }
}
