package benchtwin.sets;

import benchtwin.club.WantedClub;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What is decided: a pinned club takes its pinned parts and nothing else, and no other club takes them. */
final class DecidedParts {

    private final Map<List<String>, SetPin> byClub = new HashMap<>();
    private final Map<String, List<String>> clubOfHead = new HashMap<>();
    private final Map<String, List<String>> clubOfShaft = new HashMap<>();

    /**
     * Collects them.
     * @param pins one for each club and part at most
     */
    DecidedParts(List<SetPin> pins) {
        for (SetPin pin : pins) {
            List<String> club = List.of(pin.player(), pin.club());
            SetPin known = byClub.get(club);
            byClub.put(club, known == null ? pin : new SetPin(pin.player(), pin.club(), pin.head().or(known::head),
                pin.shaft().or(known::shaft)));
            pin.head().ifPresent(tag -> clubOfHead.put(tag, club));
            pin.shaft().ifPresent(tag -> clubOfShaft.put(tag, club));
        }
    }

    Optional<SetPin> of(WantedClub club) {
        return Optional.ofNullable(byClub.get(List.of(club.player(), club.club())));
    }

    /** Whether a club may have this head. */
    boolean allowHead(WantedClub club, String head) {
        List<String> key = List.of(club.player(), club.club());
        return clubOfHead.getOrDefault(head, key).equals(key) && of(club).flatMap(SetPin::head).orElse(head).equals(head);
    }

    /** Whether a club may have this shaft. */
    boolean allowShaft(WantedClub club, String shaft) {
        List<String> key = List.of(club.player(), club.club());
        return clubOfShaft.getOrDefault(shaft, key).equals(key) && of(club).flatMap(SetPin::shaft).orElse(shaft).equals(shaft);
    }
}
