package benchtwin.cli;

import benchtwin.bench.BuildIdentity;
import benchtwin.bench.RulesService;
import benchtwin.bench.RulesService.Checked;
import benchtwin.club.RecordedClub;
import benchtwin.rules.EquipmentRules;
import benchtwin.rules.Finding;
import benchtwin.rules.Limit;
import benchtwin.rules.RulesText;
import benchtwin.rules.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Clubs held against the equipment limits: one in full, several in short with what needs a look in full. */
final class RulesPage {

    private static final String INDENT = "   ";
    private static final String ROW = INDENT + "%-22s %-16s %-26s %8s  %s";
    private static final String SHORT = "%-14s %-12s %-17s %s";
    private static final int TAG_WIDTH = 14;

    private final Page page;
    private final RulesService.Answer answer;
    private final boolean why;
    private boolean starred;

    RulesPage(Page page, RulesService.Answer answer, boolean why) {
        this.page = page;
        this.answer = answer;
        this.why = why;
    }

    void print(List<String> remarks) {
        if (answer.clubs().size() == 1 && answer.player().isEmpty()) {
            full(answer.clubs().get(0), true);
        } else {
            inShort();
        }
        page.blank();
        page.wrapped("", EquipmentRules.HOW_JUDGED);
        if (starred) {
            page.wrapped("", "* Only where that local rule is in force; --local-rule counts it.");
        }
        if (answer.clubs().stream().anyMatch(Checked::isLengthNearALimit)) {
            page.wrapped("", EquipmentRules.READS_LESS + ".");
        }
        answer.clubs().stream().flatMap(club -> club.list().stream()).findFirst().ifPresent(list -> page.wrapped("",
            "%s: %s%s".formatted(answer.clubs().stream().filter(club -> club.list().isPresent()).map(club -> club.club().tag())
                .collect(Collectors.joining(", ")), list.text(), why ? source(list) : "")));
        if (why) {
            sources();
            EquipmentRules.information().forEach(each -> page.wrapped("Also: ", each.text() + source(each)));
        }
        page.wrapped("", EquipmentRules.WHO_DECIDES);
        remarks.forEach(remark -> page.wrapped("Files: ", remark));
        page.line("benchtwin %s", BuildIdentity.text());
    }

    private void inShort() {
        page.line("%s", answer.player().map(player -> "The bag of " + player).orElse("Every club on record")
            + " against the published equipment limits");
        answer.inPlay().ifPresent(this::bag);
        page.blank();
        page.line(SHORT, "club", "", "", "nearest its limit, by its margin");
        answer.clubs().forEach(this::shortLine);
        List<Checked> inFull = answer.clubs().stream().filter(club -> why || club.findings().stream()
            .anyMatch(finding -> finding.verdict().isDoubtful())).toList();
        inFull.forEach(club -> {
            page.blank();
            full(club, why);
        });
        notMeasured();
    }

    private void bag(int inPlay) {
        page.wrapped("", "%d %s in play; a bag holds at most %d%s".formatted(inPlay, inPlay == 1 ? "club" : "clubs",
            EquipmentRules.MOST_CLUBS, answer.tooMany() > 0 ? ": %d too many.".formatted(answer.tooMany()) : "."));
    }

    private void shortLine(Checked club) {
        page.line(SHORT, page.cut(club.club().tag(), TAG_WIDTH), kind(club.club()), club.verdict().word(),
            club.nearest().map(finding -> "%s %s %s".formatted(finding.limit().quantity().word(),
                RulesText.margin(finding.limit().quantity(), finding.marginWithAllowance().orElseThrow()),
                finding.limit().quantity().unit()).replace(" °", "°")).orElse(""));
    }

    private static String kind(RecordedClub club) {
        return club.category().word() + club.number().map(number -> " " + number).orElse("");
    }

    /** What nobody measured, over all the clubs. */
    private void notMeasured() {
        Map<String, List<String>> clubs = new TreeMap<>();
        for (Checked club : answer.clubs()) {
            for (Finding finding : club.findings()) {
                finding.lacking().ifPresent(lacking -> {
                    List<String> tags = clubs.computeIfAbsent(lacking, each -> new ArrayList<>());
                    if (!tags.contains(club.club().tag())) {
                        tags.add(club.club().tag());
                    }
                });
            }
        }
        if (clubs.isEmpty()) {
            return;
        }
        page.blank();
        page.line("Not measured, and so not judged");
        clubs.forEach((lacking, tags) -> page.wrapped(INDENT, "%s: %s.".formatted(sentence(lacking), String.join(", ", tags))));
    }

    private void full(Checked club, boolean lacking) {
        page.wrapped("", "%s (%s), %s-handed %s%s: %s%s".formatted(club.club().tag(), club.club().player(), club.club().hand().word(),
            kind(club.club()), club.club().newest().state().isSound() ? "" : ", " + club.club().newest().state().word(),
            club.verdict().word(), club.findings().stream().anyMatch(finding -> finding.verdict() == Verdict.NOT_MEASURED)
                && club.verdict() != Verdict.NOT_MEASURED ? " in what was measured" : ""));
        page.line(ROW, "", "value", "limit", "margin", "");
        for (Finding finding : club.findings()) {
            if (finding.value().isPresent()) {
                row(finding, club.counts(finding));
            } else if (lacking) {
                page.line(ROW, name(finding.limit()), "·", RulesText.limit(finding.limit()), "", finding.verdict().word());
            }
        }
        if (lacking) {
            String toMeasure = club.findings().stream().flatMap(finding -> finding.lacking().stream()).distinct()
                .collect(Collectors.joining("; "));
            if (!toMeasure.isEmpty()) {
                page.wrapped(INDENT + "To know the rest: ", toMeasure + ".");
            }
        }
        if (why) {
            club.findings().stream().filter(finding -> finding.value().isPresent())
                .collect(Collectors.toMap(finding -> finding.limit().quantity(), finding -> finding.value().orElseThrow().from(),
                    (a, b) -> a, TreeMap::new))
                .forEach((quantity, from) -> page.wrapped(INDENT + sentence(quantity.word()) + ": ", from + "."));
        }
    }

    private void row(Finding finding, boolean counts) {
        starred |= !counts;
        Limit limit = finding.limit();
        page.line(ROW, name(limit), RulesText.value(limit.quantity(), finding.value().orElseThrow()), RulesText.limit(limit),
            RulesText.margin(limit.quantity(), finding.marginWithAllowance().orElseThrow()),
            finding.verdict().word() + (counts ? "" : " *"));
        if (limit.allowance() > 0) {
            page.line(ROW, "  the limit alone", "", RulesText.limitAlone(limit),
                RulesText.margin(limit.quantity(), finding.margin().orElseThrow()), finding.verdictOfLimitAlone().word());
        }
    }

    private static String name(Limit limit) {
        return limit.quantity().word() + (limit.isLocal() ? ", local rule" : "");
    }

    private void sources() {
        for (Limit.Source source : Limit.Source.values()) {
            String limits = answer.clubs().stream().flatMap(club -> club.findings().stream()).map(Finding::limit).distinct()
                .filter(limit -> limit.source() == source).map(limit -> limit.quantity().word()).distinct()
                .collect(Collectors.joining(", "));
            if (!limits.isEmpty()) {
                page.wrapped("Source: ", "%s: %s (%s).".formatted(limits, source.title(), source.mark()));
            }
        }
    }

    private static String source(EquipmentRules.Information information) {
        return " [" + information.source() + "]";
    }

    private static String sentence(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }
}
