package benchtwin.cli;

import benchtwin.bench.BuildIdentity;
import benchtwin.bench.RulesService;
import benchtwin.bench.RulesService.Checked;
import benchtwin.bench.RulesWords;
import benchtwin.rules.EquipmentRules;
import benchtwin.rules.Finding;
import benchtwin.rules.Limit;
import benchtwin.rules.RulesText;
import java.util.List;
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
            "%s: %s%s".formatted(RulesWords.listed(answer), list.text(), why ? source(list) : "")));
        if (why) {
            sources();
            EquipmentRules.information().forEach(each -> page.wrapped("Also: ", each.text() + source(each)));
        }
        page.wrapped("", EquipmentRules.WHO_DECIDES);
        remarks.forEach(remark -> page.wrapped("Files: ", remark));
        page.line("benchtwin %s", BuildIdentity.text());
    }

    private void inShort() {
        page.line("%s", RulesWords.title(answer));
        answer.inPlay().ifPresent(inPlay -> page.wrapped("", RulesWords.bag(answer, inPlay)));
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

    private void shortLine(Checked club) {
        page.line(SHORT, page.cut(club.club().tag(), TAG_WIDTH), RulesWords.kind(club.club()), club.verdict().word(), RulesWords.nearest(club));
    }

    /** What nobody measured, over all the clubs. */
    private void notMeasured() {
        Map<String, List<String>> clubs = RulesWords.notMeasured(answer);
        if (clubs.isEmpty()) {
            return;
        }
        page.blank();
        page.line("Not measured, and so not judged");
        clubs.forEach((lacking, tags) -> page.wrapped(INDENT, "%s: %s.".formatted(RulesWords.sentence(lacking), String.join(", ", tags))));
    }

    private void full(Checked club, boolean lacking) {
        page.wrapped("", "%s (%s), %s-handed %s%s: %s".formatted(club.club().tag(), club.club().player(), club.club().hand().word(),
            RulesWords.kind(club.club()), club.club().newest().state().isSound() ? "" : ", " + club.club().newest().state().word(),
            RulesWords.verdict(club)));
        page.line(ROW, "", "value", "limit", "margin", "");
        for (Finding finding : club.findings()) {
            if (finding.value().isPresent()) {
                row(finding, club.counts(finding));
            } else if (lacking) {
                page.line(ROW, RulesWords.name(finding.limit()), "·", RulesText.limit(finding.limit()), "", finding.verdict().word());
            }
        }
        if (lacking) {
            String toMeasure = RulesWords.toMeasure(club);
            if (!toMeasure.isEmpty()) {
                page.wrapped(INDENT + "To know the rest: ", toMeasure + ".");
            }
        }
        if (why) {
            club.findings().stream().filter(finding -> finding.value().isPresent())
                .collect(Collectors.toMap(finding -> finding.limit().quantity(), finding -> finding.value().orElseThrow().from(),
                    (a, b) -> a, TreeMap::new))
                .forEach((quantity, from) -> page.wrapped(INDENT + RulesWords.sentence(quantity.word()) + ": ", from + "."));
        }
    }

    private void row(Finding finding, boolean counts) {
        starred |= !counts;
        Limit limit = finding.limit();
        page.line(ROW, RulesWords.name(limit), RulesText.value(limit.quantity(), finding.value().orElseThrow()), RulesText.limit(limit),
            RulesText.margin(limit.quantity(), finding.marginWithAllowance().orElseThrow()),
            finding.verdict().word() + (counts ? "" : " *"));
        if (limit.allowance() > 0) {
            page.line(ROW, "  the limit alone", "", RulesText.limitAlone(limit),
                RulesText.margin(limit.quantity(), finding.margin().orElseThrow()), finding.verdictOfLimitAlone().word());
        }
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
}
