package benchtwin.samples;

import static benchtwin.club.ClubState.BACKUP;
import static benchtwin.club.ClubState.IN_PLAY;
import static benchtwin.club.Hand.LEFT;
import static benchtwin.club.Hand.RIGHT;

import benchtwin.club.HeadCondition;
import benchtwin.club.LengthMethod;
import java.util.ArrayList;
import java.util.List;

/** The players and what they have in the bag. Whole bags: J. Quillby, right-handed, and L. Wexcombe, left-handed. */
final class PlayerClubs {

    private static final String QUILLBY_DAY = "2026-02-17";
    private static final String WEXCOMBE_DAY = "2026-03-24";

    private PlayerClubs() {
    }

    static List<ClubSpec> all() {
        List<ClubSpec> clubs = new ArrayList<>();
        clubs.addAll(broken());
        clubs.addAll(singles());
        clubs.addAll(quillbysBag());
        clubs.addAll(wexcombesBag());
        return clubs;
    }

    /** The cracked driver, a cracked bonded fairway wood, and a driver whose shaft broke. */
    private static List<ClubSpec> broken() {
        return List.of(oakesDriver(),
            new ClubSpec("TOLVER-3W", "T. Tolver", RIGHT, HeadLines.LATHE, "3", ShaftLines.GHYLL_75_S, 43).tip(0.5)
                .inPlay("2025-04-02", "").inPlay("2026-01-20", "").damaged("2026-05-18", "", "crown cracked at the hosel")
                .head(head -> {
                    head.loftDeg = 15.2;
                    head.lieDeg = 57.4;
                    head.faceDeg = -0.8;
                    head.condition = HeadCondition.CRACKED;
                    head.place = "scrap box";
                }),
            new ClubSpec("HARKWELL-DR", "I. Harkwell", RIGHT, HeadLines.BRACKEN, "9", ShaftLines.GHYLL_65_S, 45)
                .sleeve("quad-335").tip(0.5).inPlay("2025-06-11", "1/1").inPlay("2026-03-03", "1/2")
                .damaged("2026-05-19", "1/2", "shaft broke below the grip; head sound").shaft(shaft -> {
                    shaft.place = "scrap box";
                    shaft.note = "broken below the grip; readings from before, kept for the record";
                }));
    }

    private static ClubSpec oakesDriver() {
        return new ClubSpec("OAKES-DR", "N. Oakes", RIGHT, HeadLines.ALDER_2, "9", ShaftLines.BROOK_60_S, 45.25)
            .sleeve("lock-2-335").tip(1).inPlay("2025-03-12", "1/1").inPlay("2025-09-30", "6/5")
            .inPlay("2026-04-14", "6/5").damaged("2026-05-20", "6/5", "face cracked")
            .head(head -> {
                head.loftDeg = 9.5;
                head.lieDeg = 58.3;
                head.faceDeg = -1;
                head.condition = HeadCondition.CRACKED;
                head.place = "scrap box";
            });
    }

    private static List<ClubSpec> singles() {
        return List.of(
            new ClubSpec("OAKES-3W", "N. Oakes", RIGHT, HeadLines.BRACKEN_FAIRWAY, "3", ShaftLines.BROOK_70_S, 43)
                .sleeve("quad-335").tip(0.75).inPlay("2025-03-12", "1/3").inPlay("2026-04-14", "1/3"),
            new ClubSpec("TOLVER-DR", "T. Tolver", RIGHT, HeadLines.ADZE, "9", ShaftLines.GHYLL_65_X, 44.75).tip(1)
                .inPlay("2025-04-02", "").inPlay("2026-01-20", ""),
            new ClubSpec("DUNMARSH-4H", "P. Dunmarsh", RIGHT, HeadLines.TEASEL, "4", ShaftLines.LINDEN_85_S, 39.75)
                .tip(1).inPlay("2026-05-05", "").withoutLie(),
            new ClubSpec("SANDROW-DR", "M. Sandrow", RIGHT, HeadLines.ALDER, "10.5", ShaftLines.BROOK_50_R, 45.5)
                .sleeve("lock-1-335").tip(0.5).grip(Grips.LICHEN).swing(31).inPlay("2025-08-08", "4/3")
                .inPlay("2026-05-05", "4/3").length(LengthMethod.RULES60),
            new ClubSpec("SANDROW-7W", "M. Sandrow", RIGHT, HeadLines.LATHE, "7", ShaftLines.BROOK_70_S, 42).tip(0.5)
                .grip(Grips.LICHEN).inPlay("2025-08-08", ""),
            new ClubSpec("PENHOLLOW-54", "A. Penhollow", RIGHT, HeadLines.SICKLE, "54", ShaftLines.STAITH_120_S, 35.25)
                .swing(34).inPlay("2026-03-11", "").inPlay("2026-05-12", ""),
            new ClubSpec("PENHOLLOW-58", "A. Penhollow", RIGHT, HeadLines.SICKLE, "58", ShaftLines.STAITH_120_S, 35.125)
                .swing(34).inPlay("2026-03-11", ""),
            new ClubSpec("PENHOLLOW-PT", "A. Penhollow", RIGHT, HeadLines.SPINDLE, "3", ShaftLines.ROD, 34)
                .grip(Grips.THATCH).inPlay("2026-03-11", "").bareButt().length(LengthMethod.RULER),
            new ClubSpec("LARKFIELD-DR", "K. Larkfield", RIGHT, HeadLines.ADZE, "10.5", ShaftLines.BROOK_60_R, 45)
                .grip(Grips.MOSS_RIB).inPlay("2025-05-21", "").inPlay("2026-02-04", ""),
            new ClubSpec("LARKFIELD-DR-2", "K. Larkfield", RIGHT, HeadLines.ADZE, "10.5", ShaftLines.BROOK_60_R, 45)
                .grip(Grips.MOSS_RIB).day("2026-02-04", BACKUP, "", "second driver, stays in the trailer"),
            new ClubSpec("LARKFIELD-7I", "K. Larkfield", RIGHT, HeadLines.KILN, "7", ShaftLines.EDDY_95_S, 37).tip(1.5)
                .grip(Grips.MOSS_RIB).day("2026-02-04", IN_PLAY, "", "one of a set; the rest is at home"),
            new ClubSpec("ASHCUTTER-7I", "E. Ashcutter", RIGHT, HeadLines.SEDGE, "7", ShaftLines.SILL_105_S, 37.25)
                .tip(1.5).inPlay("2026-05-06", ""));
    }

    private static List<ClubSpec> quillbysBag() {
        List<ClubSpec> bag = new ArrayList<>();
        bag.add(quillby("DR", HeadLines.TARN, "9", ShaftLines.BROOK_60_S, 45).sleeve("notch-335").tip(0.5)
            .inPlay(QUILLBY_DAY, "4").inPlay("2026-05-13", "4"));
        bag.add(quillby("3W", HeadLines.TARN_FAIRWAY, "3", ShaftLines.BROOK_70_S, 43).sleeve("notch-335").tip(0.75)
            .inPlay(QUILLBY_DAY, "7"));
        bag.add(quillby("3H", HeadLines.TEASEL, "3", ShaftLines.LINDEN_85_S, 40.25).tip(0.5).inPlay(QUILLBY_DAY, ""));
        List<String> numbers = List.of("4", "5", "6", "7", "8", "9", "PW");
        for (int i = 0; i < numbers.size(); i++) {
            bag.add(quillby(numbers.get(i).equals("PW") ? "PW" : numbers.get(i) + "I", HeadLines.WHIN, numbers.get(i),
                ShaftLines.STAITH_120_S, 38.5 - 0.5 * i).inPlay(QUILLBY_DAY, "").inPlay("2026-05-13", ""));
        }
        for (String loft : List.of("50", "54", "58")) {
            bag.add(quillby(loft, HeadLines.SICKLE, loft, ShaftLines.STAITH_120_S, loft.equals("50") ? 35.5 : 35.25)
                .swing(34).inPlay(QUILLBY_DAY, ""));
        }
        bag.add(quillby("PT", HeadLines.SPINDLE, "3", ShaftLines.ROD, 34.5).grip(Grips.THATCH).bareButt()
            .inPlay(QUILLBY_DAY, ""));
        return bag;
    }

    private static ClubSpec quillby(String club, HeadLine line, String size, ShaftLine shaft, double lengthIn) {
        return new ClubSpec("QUILLBY-" + club, "J. Quillby", RIGHT, line, size, shaft, lengthIn);
    }

    private static List<ClubSpec> wexcombesBag() {
        List<ClubSpec> bag = new ArrayList<>();
        bag.add(wexcombe("DR", HeadLines.ALDER_2, "10.5", ShaftLines.BROOK_60_S, 45.25).sleeve("lock-2-335-left").tip(0.5)
            .inPlay("2025-10-07", "2/1").inPlay(WEXCOMBE_DAY, "2/2"));
        bag.add(wexcombe("3W", HeadLines.TARN_FAIRWAY, "3", ShaftLines.GHYLL_75_S, 42.75).sleeve("notch-335-left")
            .tip(0.5).inPlay(WEXCOMBE_DAY, "1"));
        bag.add(wexcombe("4H", HeadLines.BRACKEN_HYBRID, "4", ShaftLines.LINDEN_85_S, 39.75).sleeve("quad-370").tip(1)
            .inPlay(WEXCOMBE_DAY, "3/1"));
        List<String> numbers = List.of("5", "6", "7", "8", "9", "PW", "GW");
        for (int i = 0; i < numbers.size(); i++) {
            bag.add(wexcombe(Character.isDigit(numbers.get(i).charAt(0)) ? numbers.get(i) + "I" : numbers.get(i),
                HeadLines.SEDGE, numbers.get(i), ShaftLines.SILL_105_S, 38.25 - 0.5 * i).tip(0.5 + 0.5 * i)
                .swing(31.5).inPlay(WEXCOMBE_DAY, ""));
        }
        bag.add(wexcombe("56", HeadLines.TROWEL, "56", ShaftLines.SILL_105_S, 35.25).tip(4).swing(33)
            .inPlay(WEXCOMBE_DAY, ""));
        bag.add(wexcombe("60", HeadLines.SICKLE, "60", ShaftLines.STAITH_120_S, 35).swing(33).inPlay(WEXCOMBE_DAY, ""));
        bag.add(wexcombe("PT", HeadLines.HOD, "2.5", ShaftLines.ROD, 33.75).grip(Grips.THATCH).bareButt()
            .inPlay(WEXCOMBE_DAY, ""));
        return bag;
    }

    private static ClubSpec wexcombe(String club, HeadLine line, String size, ShaftLine shaft, double lengthIn) {
        return new ClubSpec("WEXCOMBE-" + club, "L. Wexcombe", LEFT, line, size, shaft, lengthIn);
    }
}
