package benchtwin.bench;

import benchtwin.club.Quantity;
import benchtwin.club.WantedClub;
import benchtwin.sets.ClubOfSet;
import benchtwin.sets.GroupFigures;
import benchtwin.sets.PlanScore;
import benchtwin.sets.PlayerSet;
import benchtwin.sets.SetAnswer;
import benchtwin.sets.SetPin;
import benchtwin.sets.Unbuilt;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.time.LocalDate;

/** A plan of sets as JSON; the names are documented in docs/json.md and stay. */
public final class SetJson {

    private SetJson() {
    }

    /**
     * One object.
     * @param answer the plan with what was asked
     * @param sets   where the targets came from
     * @return JSON text, indented
     */
    public static String text(SetService.Answer answer, WantedSets sets) {
        SetAnswer plan = answer.plan();
        ObjectNode root = Json.object();
        ArrayNode players = root.putArray("players");
        plan.players().forEach(set -> players.add(player(set, answer)));
        root.set("score", score(plan.score()));
        ArrayNode why = root.putArray("why");
        plan.why().forEach(line -> why.addObject().put("player", line.player()).put("group", line.group())
            .put("rule", line.rule()).put("cost", Json.rounded(line.cost())));
        ArrayNode order = root.putArray("order");
        plan.order().forEach(line -> unlessInfinite(order.addObject().put("part", line.part()).put("forWhom", line.forWhom()),
            "gain", line.gain(), "buildsAClub"));
        plan.pinCost().ifPresent(cost -> unlessInfinite(root, "pinCost", cost, "pinsLeaveAClubOut"));
        strings(root.putArray("notes"), plan.notes());
        strings(root.putArray("cautions"), Cautions.of(plan));
        root.set("asked", asked(answer, sets));
        return Json.answer(root);
    }

    private static void unlessInfinite(ObjectNode node, String name, double value, String infinite) {
        node.put(infinite, Double.isInfinite(value));
        if (Double.isFinite(value)) {
            node.put(name, Json.rounded(value));
        }
    }

    private static void strings(ArrayNode array, Iterable<String> values) {
        values.forEach(array::add);
    }

    private static ObjectNode player(PlayerSet set, SetService.Answer answer) {
        ObjectNode node = Json.object();
        node.put("player", set.player());
        ArrayNode clubs = node.putArray("clubs");
        set.clubs().forEach(club -> clubs.add(club(club, answer)));
        ArrayNode groups = node.putArray("groups");
        set.groups().forEach(group -> groups.add(group(group)));
        node.put("unbuilt", set.unbuilt());
        node.put("outOfTolerance", set.outOfTolerance());
        node.put("worstMiss", Json.rounded(set.worstMiss()));
        return node;
    }

    private static ObjectNode club(ClubOfSet club, SetService.Answer answer) {
        WantedClub wanted = club.wanted();
        ObjectNode node = Json.object();
        node.put("club", wanted.club());
        node.put("category", wanted.category().word());
        wanted.number().ifPresent(number -> node.put("number", number));
        node.put("hand", wanted.hand().word());
        wanted.group().ifPresent(group -> node.put("group", group));
        node.put("priority", wanted.priority());
        wanted.neededBy().map(LocalDate::toString).ifPresent(day -> node.put("neededBy", day));
        ArrayNode pinned = node.putArray("pinned");
        for (SetPin pin : answer.request().pins()) {
            if (pin.player().equals(wanted.player()) && pin.club().equals(wanted.club())) {
                pin.head().ifPresent(tag -> pinned.add("head"));
                pin.shaft().ifPresent(tag -> pinned.add("shaft"));
            }
        }
        club.target().ifPresent(target -> node.set("target", OptionJson.target(target)));
        node.put("built", club.build().isPresent());
        club.build().ifPresent(build -> node.setAll(unranked(OptionJson.option(build))));
        club.unbuilt().ifPresent(unbuilt -> node.set("unbuilt", unbuilt(unbuilt)));
        return node;
    }

    private static ObjectNode unbuilt(Unbuilt unbuilt) {
        ObjectNode node = Json.object();
        node.put("reason", unbuilt.reason());
        unbuilt.substitute().ifPresent(nearest -> node.set("nearest", unranked(OptionJson.option(nearest))));
        return node;
    }

    /** A club of a set stands in no order with others. */
    private static ObjectNode unranked(ObjectNode option) {
        option.remove("rank");
        option.remove("tiedWith");
        return option;
    }

    private static ObjectNode group(GroupFigures group) {
        ObjectNode node = Json.object();
        node.put("group", group.group());
        node.put("rule", group.rule().word());
        node.put("built", group.built());
        strings(node.putArray("headModels"), group.headModels());
        strings(node.putArray("shaftModels"), group.shaftModels());
        group.frequencySpreadCpm().ifPresent(spread -> node.put("frequencySpreadCpm", Json.rounded(spread)));
        group.swingSpread().ifPresent(spread -> group.swing().ifPresent(quantity -> node.put(
            quantity == Quantity.BUTT_INERTIA ? "moiSpreadKgCm2" : "swingWeightSpreadPoints", Json.rounded(spread))));
        group.shaftMassSpreadG().ifPresent(spread -> node.put("shaftMassSpreadG", Json.rounded(spread)));
        return node;
    }

    private static ObjectNode score(PlanScore score) {
        ObjectNode node = Json.object();
        node.put("clubs", score.clubs());
        node.put("unbuilt", score.unbuilt());
        node.put("cost", Json.rounded(score.cost()));
        score.bound().ifPresent(bound -> node.put("bound", Json.rounded(bound)));
        score.gapPercent().ifPresent(gap -> node.put("gapPercent", Json.rounded(gap)));
        node.put("jointGain", Json.rounded(score.jointGain()));
        node.put("options", score.options());
        node.put("pairs", score.pairs());
        node.put("rounds", score.rounds());
        node.put("seed", score.seed());
        return node;
    }

    private static ObjectNode asked(SetService.Answer answer, WantedSets sets) {
        ObjectNode node = Json.object();
        sets.file().map(Path::toString).ifPresent(file -> node.put("targets", file));
        sets.lines().map(Path::toString).ifPresent(lines -> node.put("lines", lines));
        strings(node.putArray("players"), answer.request().targets().players());
        ArrayNode pins = node.putArray("pins");
        for (SetPin pin : answer.request().pins()) {
            ObjectNode one = pins.addObject().put("player", pin.player()).put("club", pin.club());
            pin.head().ifPresent(tag -> one.put("head", tag));
            pin.shaft().ifPresent(tag -> one.put("shaft", tag));
        }
        strings(node.putArray("banned"), answer.request().banned().stream().sorted().toList());
        answer.request().grip().ifPresent(grip -> node.put("grip", grip.tag()));
        if (!answer.limits().time().isZero()) {
            node.put("timeMs", answer.limits().time().toMillis());
        }
        node.put("gapPercent", answer.limits().gapPercent());
        answer.limits().rounds().ifPresent(rounds -> node.put("rounds", rounds));
        return node;
    }
}
