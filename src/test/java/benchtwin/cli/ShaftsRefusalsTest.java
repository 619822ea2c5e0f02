package benchtwin.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What {@code benchtwin shafts} does not do, and how it says so. */
class ShaftsRefusalsTest {

    /** The trusted driver, whose face has cracked, around another head. */
    private static final String OAKES = "shafts --club OAKES-DR --head H-014 ";

    @Test
    void aHeadWithoutItsMassCannotBeBuilt(@TempDir Path folder) throws IOException {
        Path stock = Typed.workshopWith(folder, "heads.csv", Typed.cell("H-014", "mass_g", ""));
        complains(Typed.on(stock, OAKES),
            "head H-014 was never weighed, so no club with it can be worked out: weigh it, or name another");
    }

    @Test
    void aHeadWithoutItsSeatToGroundCannotBeBuilt(@TempDir Path folder) throws IOException {
        Path stock = Typed.workshopWith(folder, "heads.csv", Typed.cell("H-014", "seat_to_ground_mm", ""));
        complains(Typed.on(stock, OAKES),
            "the seat of head H-014 to the ground was never measured, so a length cannot be worked out");
    }

    @Test
    void aGripThatWasNeverWeighedIsNotGuessed(@TempDir Path folder) throws IOException {
        Path stock = Typed.workshopWith(folder, "grips.csv", Typed.cell("G-001", "mass_g", ""));
        complains(Typed.on(stock, OAKES),
            "grip G-001 was never weighed, so no club with it can be worked out: weigh it, or name another");
        assertThat(Typed.on(stock, OAKES + "--grip G-002 --top 1").status()).isEqualTo(Main.DONE);
    }

    private static void complains(Typed typed, String message) {
        assertThat(typed.err().strip()).isEqualTo("benchtwin: " + message);
        assertThat(typed.status()).isEqualTo(Main.BAD_INPUT);
        assertThat(typed.out()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '\'', textBlock = """
        --club OAKS-DR | no club is tagged OAKS-DR; nearest are OAKES-DR, OAKES-3W, TOLVER-DR
        --club OAKES-DR --head H-0144 | no head is tagged H-0144; nearest are H-014, H-044, H-144
        --club OAKES-DR --head H-014 --grip G-0022 | no grip is tagged G-0022; nearest are G-002, G-022, G-001
        --top 3 | name the club with --club TAG, or the build with --head, --grip and --target
        --club OAKES-DR | head H-106 is cracked: name the one it is built with, --head TAG
        --club OAKES-DR --head H-106 | head H-106 is cracked: name another
        --club PENHOLLOW-PT | head H-180 is a putter's; shafts are chosen by frequency for woods and irons
        --club OAKES-DR --head H-014 --length long | --length "long" is not a length; expected inches such as 45.25 or 45 1/4, or millimetres such as 1149 mm
        --club OAKES-DR --head H-014 --length 61 | length of 61 in: expected 18 in to 60 in
        --club OAKES-DR --head H-014 --length 17.5 | length of 17 1/2 in: expected 18 in to 60 in
        --club OAKES-DR --head H-014 --length -45 | length of -45 in: expected 18 in to 60 in
        --club OAKES-DR --head H-014 --target frequency=-5 | frequency of -5.0 cpm: expected 100.0 cpm to 600.0 cpm
        --club OAKES-DR --head H-014 --target frequency=5000 | frequency of 5000.0 cpm: expected 100.0 cpm to 600.0 cpm
        --club OAKES-DR --head H-014 --target mass=-5 | shaft mass of -5.0 g: expected 20.0 g to 250.0 g
        --club OAKES-DR --head H-014 --target balance=50 | shaft balance of 50 in: expected 5 in to 40 in
        --club OAKES-DR --head H-014 --target torque=0 | torque of 0.0°: expected 0.5° to 15.0°
        --club OAKES-DR --head H-014 --tip-step 0 | --tip-step "0": expected a length from 0.1 mm to 1 in, such as 1/16 or 1 mm
        --club OAKES-DR --head H-014 --tip-step much | --tip-step "much": expected a length from 0.1 mm to 1 in, such as 1/16 or 1 mm
        --club OAKES-DR --head H-014 --pick ladder --top 3 | --top and --per-model go with --pick nearest; a ladder has --rungs
        --club OAKES-DR --head H-014 --step 3 | --step and --rungs go with --pick ladder
        --club OAKES-DR --head H-014 --pick ladder --rungs 0 | --rungs 0: expected 1 to 25
        --club OAKES-DR --head H-014 --pick ladder --rungs 26 | --rungs 26: expected 1 to 25
        --club OAKES-DR --head H-014 --top 201 | --top 201: expected 1 to 200
        --club OAKES-DR --head H-014 --per-model 0 | --per-model 0: expected 1 to 200
        --club OAKES-DR --head H-014 --target frequency=abc | --target: "abc" is not a value for frequency; expected a number
        --club OAKES-DR --head H-014 --clamp 5 | --clamp and --over-grip say how a frequency written out is read: they go with --target frequency=…
        --club OAKES-DR --head H-014 --over-grip --target mass=56 | --clamp and --over-grip say how a frequency written out is read: they go with --target frequency=…
        --club OAKES-DR --head H-014 --target frequency=250 --clamp 50 | --clamp "50": expected a clamp from 2 to 12 in
        --club OAKES-DR --head H-014 --assume-clamp 1 | --assume-clamp "1": expected a clamp from 2 to 12 in
        --club OAKES-DR --head H-014 --plot drawer.gif | "drawer.gif" does not say which picture it is to be; expected a name ending in .svg or .png
        --club OAKES-DR --head H-014 --plot src | "src" does not say which picture it is to be; expected a name ending in .svg or .png
        --club OAKES-DR --head H-014 --weight frequency=0 | shafts are chosen for their stiffness: give frequency a weight above 0
        --club OAKES-DR --head H-014 --weight torque=-1 | --weight: a weight of -1.00 for torque is below 0
        --club OAKES-DR --head H-014 --tolerance frequency=0 | --tolerance: a tolerance of 0.00 for frequency is not above 0
        --club OAKES-DR --head H-014 --json --why | --json prints everything already; leave out --why and --plain
        --club OAKES-DR --head H-014 --length 45 --target length=45 | --length and --target both name the length
        --head H-014 | a target written out needs the head and the grip of the build: --head TAG and --grip TAG
        --head H-014 --grip G-002 | no stiffness is named: give a club with --club, or --target frequency=…
        --head H-014 --grip G-002 --target frequency=250 | the length of the new build is not known: give it with --length
        --head H-014 --grip G-002 --target frequency=250,length=45 --same-model | there is no old shaft on record whose model could be asked for
        --profile S-001 --club OAKES-DR | --profile shows one shaft; leave out --club, which is for a choice of shafts
        --profile S-001 --top 3 | --profile shows one shaft; leave out --top, which is for a choice of shafts
        --profile S-001 --pick ladder | --profile shows one shaft; leave out --pick, which is for a choice of shafts
        --profile S-001 --tip-step 1/4 | --profile shows one shaft; leave out --tip-step, which is for a choice of shafts
        --profile S-001 --json --plain | --json is one object in any case; leave out --plain
        --profile S-0033 | no shaft is tagged S-0033; nearest are S-003, S-033, S-001
        """)
    void whatCannotBeDoneGetsOneMessageThatSaysWhy(String options, String message) {
        complains(Typed.line("shafts " + options), message);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
        --pick snake | Invalid value for option '--pick': expected one of nearest, ladder but was 'snake'
        --pick ladder --step x | Invalid value for option '--step': 'x' is not a number
        --top x | Invalid value for option '--top': 'x' is not a whole number
        --material wood | Invalid value for option '--material': expected one of graphite, steel but was 'wood'
        """)
    void whatIsNoValueOfAnOptionIsSaidInPlainWords(String options, String message) {
        Typed typed = Typed.line(OAKES + options);
        assertThat(typed.status()).isEqualTo(Main.BAD_INPUT);
        assertThat(typed.err().lines()).containsExactly("benchtwin: " + message, "See: benchtwin shafts --help");
    }

    @Test
    void wantedWordsAreThoseOfTheHelp() {
        complains(Typed.line(OAKES + "--target loft=9"), "--target: \"loft\" is not a quantity; expected one of length, "
            + "swing-weight, frequency, torque, mass, balance");
    }

    @Test
    void aPictureGoesWhereThereIsAFolder(@TempDir Path folder) throws IOException {
        Path nowhere = folder.resolve("nowhere");
        complains(Typed.line(OAKES + "--plot \"" + nowhere.resolve("a.svg") + "\""),
            nowhere.resolve("a.svg") + " cannot be written: there is no folder " + nowhere);
        Path taken = Files.createDirectory(folder.resolve("b.svg"));
        complains(Typed.line(OAKES + "--plot \"" + taken + "\""), taken + " is a folder; expected the name of a picture");
    }
}
