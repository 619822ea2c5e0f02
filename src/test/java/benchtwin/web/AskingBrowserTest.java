package benchtwin.web;

import static org.assertj.core.api.Assertions.assertThat;

import benchtwin.bench.JobBook;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.openqa.selenium.By;

/** Numbers without a club, a build before it is built, a club against the rules. */
@Tag("browser")
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class AskingBrowserTest {

    @RegisterExtension
    static final WebBook PAGES = new WebBook();
    @RegisterExtension
    static final Browser BROWSER = Browser.at(PAGES);

    @Test
    @Order(1)
    void aBuildIsMeasuredBeforeItIsBuilt() {
        BROWSER.open("/clubs/SANDROW-DR").press("What would it measure?").sees("What it rests on").sees("Head H-101, driver");
        BROWSER.type("Tip trim", "1/2").press("Work it out").sees("swing weight");
        BROWSER.patiently().until(any -> BROWSER.path().contains("tipTrim=1%2F2"));
        BROWSER.type("Tape or hot melt", "lots");
        BROWSER.field("In the ports").click();
        BROWSER.sees("tape or hot melt: \"lots\" is not a number");
        Look.asItStands(BROWSER, "predict-wrong");
        BROWSER.type("Tape or hot melt", "2");
        BROWSER.press("Work it out").sees("What it rests on").sees("Head H-101, driver");
        Look.asItStands(BROWSER, "predict");
    }

    @Test
    @Order(1)
    void aShaftShowsItsStiffnessAndAHeadIsBentByAnAmount() {
        BROWSER.open("/stock/S-001").press("Stiffness along it").sees("What it was read at").sees("Against the default shape");
        Look.asItStands(BROWSER, "profile");
        BROWSER.open("/bend/H-004?change=yes").press("Or by how much is it to change?").press("How it is worked and read")
            .press("A limit you answer for");
        Look.asItStands(BROWSER, "bend-asked");
    }

    @Test
    @Order(2)
    void aClubAndABagAreHeldAgainstTheRules() {
        BROWSER.open("/clubs/OAKES-DR").press("Rules").sees("Clearly within in what was measured").sees("not counted");
        BROWSER.field("the local rule on length").click();
        BROWSER.press("Judge by it").landsOn(".*localRule=yes");
        assertThat(BROWSER.text()).doesNotContain("not counted").contains("Advice only");
        Look.asItStands(BROWSER, "rules");
        BROWSER.open("/players/J.%20Quillby").press("Against the rules").sees("a bag holds at most 14");
        Look.asItStands(BROWSER, "rules-bag");
        Look.at(BROWSER, "rules-all", "/rules");
    }

    @Test
    @Order(3)
    void numbersWithoutAClubBecomeAJob() throws Exception {
        BROWSER.open("/").press("Find a build from a written target").sees("To be ranked it still needs");
        Look.asItStands(BROWSER, "target-empty");
        BROWSER.type("loft", "9.5").type("lie", "58").type("face", "0").type("length", "45 1/4").type("swing weight", "D3").type("frequency", "250").type("Grip's tag", "G-001");
        BROWSER.press("Rank").sees("Nearest first").sees("Head now");
        BROWSER.press("Tolerances and weights").type("weight of loft", "5");
        BROWSER.field("weight of lie").click();
        BROWSER.patiently().until(any -> BROWSER.path().contains("weight-loft=5"));
        BROWSER.press("Tolerances and weights").type("Show", "1");
        BROWSER.field("Left out").click();
        BROWSER.patiently().until(any -> BROWSER.path().contains("top=1") && !BROWSER.text().contains("Why H-"));
        BROWSER.patiently().until(any -> BROWSER.text().contains("before and after"));
        Look.asItStands(BROWSER, "target");
        String first = BROWSER.seen(By.cssSelector("#option-1 h2")).getText();
        BROWSER.type("For player", "N. Oakes");
        BROWSER.seen(By.cssSelector("#option-1 form button.do")).click();
        BROWSER.landsOn("/jobs/\\d+").sees("What the target should measure").sees("N. Oakes");
        JobBook.Job job = JobBook.list(PAGES.book(), false).get(0);
        assertThat(job.parts()).anySatisfy(part -> assertThat(first).contains(part.tag()));
    }
}
