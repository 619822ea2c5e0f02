package benchtwin.bench;

import benchtwin.club.Category;
import benchtwin.club.Grip;
import benchtwin.club.Head;
import benchtwin.club.SetTargets;
import benchtwin.club.Shaft;
import benchtwin.club.Target;
import benchtwin.club.WantedClub;
import benchtwin.match.ShopSettings;
import benchtwin.sets.PartCheck;
import benchtwin.sets.SetPin;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Finds the clubs and parts that pins name, and says all that is wrong with them at once. */
final class SetPins {

    private final Workshop workshop;
    private final SetTargets targets;
    private final Set<String> banned;
    private final PartCheck check;
    private final List<String> faults = new ArrayList<>();

    SetPins(Workshop workshop, SetTargets targets, Set<String> banned, Optional<Grip> grip, ShopSettings shop) {
        this.workshop = workshop;
        this.targets = targets;
        this.banned = banned;
        this.check = new PartCheck(workshop.inventory(), shop, grip);
    }

    /** What is fixed for one club. */
    private static final class Fixed {
        private Head head;
        private Shaft shaft;
    }

    /**
     * The pins.
     * @param typed as typed
     * @return at most one a club
     * @throws BadInput with everything that is wrong with them
     */
    List<SetPin> of(List<SetService.Pin> typed) throws BadInput {
        Map<WantedClub, Fixed> fixed = new LinkedHashMap<>();
        for (SetService.Pin pin : typed) {
            Optional<WantedClub> club = club(pin.club());
            if (club.isPresent()) {
                parts(pin, club.get(), fixed.computeIfAbsent(club.get(), c -> new Fixed()));
            }
        }
        once(fixed);
        for (Map.Entry<WantedClub, Fixed> entry : fixed.entrySet()) {
            usable(entry.getKey(), entry.getValue());
        }
        if (!faults.isEmpty()) {
            throw new BadInput(faults);
        }
        return fixed.entrySet().stream().map(e -> new SetPin(e.getKey().player(), e.getKey().club(),
            Optional.ofNullable(e.getValue().head).map(Head::tag), Optional.ofNullable(e.getValue().shaft).map(Shaft::tag)))
            .toList();
    }

    private static String name(WantedClub club) {
        return club.player() + "/" + club.club();
    }

    private Optional<WantedClub> club(String text) {
        List<WantedClub> named = targets.clubs().stream()
            .filter(club -> text.equalsIgnoreCase(club.club()) || text.equalsIgnoreCase(name(club))).toList();
        if (named.size() == 1) {
            return Optional.of(named.get(0));
        }
        if (named.isEmpty()) {
            List<String> names = text.contains("/") ? targets.clubs().stream().map(SetPins::name).toList()
                : targets.clubs().stream().map(WantedClub::club).toList();
            faults.add("%s: no such club is planned; expected its name in the set; nearest are %s".formatted(workshop.asks(ToDo.PIN, text),
                NearNames.of(text, names)));
        } else {
            faults.add("%s: there is one for each of %s; expected the player before it, as %s".formatted(workshop.asks(ToDo.PIN, text),
                named.stream().map(WantedClub::player).distinct().collect(Collectors.joining(", ")), name(named.get(0))));
        }
        return Optional.empty();
    }

    private void parts(SetService.Pin pin, WantedClub club, Fixed fixed) {
        try {
            if (pin.head().isPresent()) {
                Head head = workshop.head(pin.head().get());
                twice(club, "head", fixed.head == null ? null : fixed.head.tag(), head.tag());
                fixed.head = head;
            }
        } catch (BadInput unknown) {
            unknown.messages().forEach(message -> fault(club, message));
        }
        try {
            if (pin.shaft().isPresent()) {
                Shaft shaft = workshop.shaft(pin.shaft().get());
                twice(club, "shaft", fixed.shaft == null ? null : fixed.shaft.tag(), shaft.tag());
                fixed.shaft = shaft;
            }
        } catch (BadInput unknown) {
            unknown.messages().forEach(message -> fault(club, message));
        }
    }

    private void twice(WantedClub club, String part, String before, String now) {
        if (before != null && !before.equals(now)) {
            fault(club, "its %s is pinned to %s and to %s; expected one".formatted(part, before, now));
        }
    }

    private void fault(WantedClub club, String words) {
        faults.add("%s: %s".formatted(workshop.asks(ToDo.PIN, name(club)), words));
    }

    /** Every part is in one club only, and not banned. */
    private void once(Map<WantedClub, Fixed> fixed) {
        Map<String, WantedClub> heads = new HashMap<>();
        Map<String, WantedClub> shafts = new HashMap<>();
        fixed.forEach((club, parts) -> {
            if (parts.head != null) {
                once(heads.putIfAbsent(parts.head.tag(), club), club, "head " + parts.head.tag(), parts.head.tag());
            }
            if (parts.shaft != null) {
                once(shafts.putIfAbsent(parts.shaft.tag(), club), club, "shaft " + parts.shaft.tag(), parts.shaft.tag());
            }
        });
    }

    private void once(WantedClub other, WantedClub club, String part, String tag) {
        if (other != null) {
            fault(club, "%s is pinned to %s as well; expected every part in one club".formatted(part, name(other)));
        }
        if (banned.contains(tag)) {
            fault(club, "%s is pinned and banned; expected one or the other".formatted(part));
        }
    }

    private void usable(WantedClub club, Fixed parts) {
        Optional<Target> target = targets.targetOf(club);
        if (target.isEmpty()) {
            fault(club, "nothing is wanted of this club that could be planned; expected a quantity with a weight above 0");
            return;
        }
        Optional<String> noHead = Optional.ofNullable(parts.head).flatMap(head -> check.whyNot(club, target.get(), head));
        noHead.ifPresent(why -> fault(club, "head %s cannot be used there: %s; expected %s".formatted(parts.head.tag(), why,
            expected(club))));
        Optional<String> noShaft = Optional.ofNullable(parts.shaft).flatMap(shaft -> check.whyNot(club, target.get(), shaft));
        noShaft.ifPresent(why -> fault(club, ("shaft %s cannot be used there: %s; expected one meant for the category %s, in no "
            + "club and promised to nobody else, with its mass and its frequency read").formatted(parts.shaft.tag(), why,
            club.category().word())));
        if (parts.head != null && parts.shaft != null && noHead.isEmpty() && noShaft.isEmpty()
            && !check.goTogether(club, target.get(), parts.head, parts.shaft)) {
            fault(club, "head %s and shaft %s do not go together there; expected a tip and a bore, or a sleeve, that fit, and "
                .formatted(parts.head.tag(), parts.shaft.tag()) + "length enough");
        }
    }

    private static String expected(WantedClub club) {
        boolean numbered = club.number().isPresent() && club.category() != Category.DRIVER && club.category() != Category.PUTTER;
        return "a sound %s-handed %s%s head, in no club and promised to nobody else, with the readings its target needs".formatted(
            club.hand().word(), numbered ? club.number().get() + " " : "", club.category().word());
    }
}
