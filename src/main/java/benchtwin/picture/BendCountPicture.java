package benchtwin.picture;

import java.util.List;
import java.util.stream.Collectors;

/**
 * How many bends heads took, habit beside habit: each bar is all heads, its parts those that took one bend, two and so on.
 * @param title  what to see
 * @param scenes one a metal and way of working; at least one
 */
public record BendCountPicture(String title, List<Scene> scenes) implements Picture {

    /**
     * One metal, worked in one way.
     * @param name   in words
     * @param counts one a habit, all with as many parts
     */
    public record Scene(String name, List<BendCount> counts) {

        public Scene {
            name = Words.required("scene", name);
            counts = List.copyOf(counts);
            if (counts.isEmpty() || counts.stream().mapToInt(count -> count.shares().size()).distinct().count() > 1) {
                throw new IllegalArgumentException("scene %s: expected habits with as many parts each".formatted(name));
            }
        }
    }

    public BendCountPicture {
        title = Words.required("title", title);
        scenes = List.copyOf(scenes);
        if (scenes.isEmpty()) {
            throw new IllegalArgumentException("nothing to draw: expected at least one scene");
        }
    }

    @Override
    public String svg() {
        Fonts.require();
        return SvgSheet.text(this, new BendCountDrawing(this));
    }

    @Override
    public byte[] png() {
        Fonts.require();
        return PngSheet.bytes(new BendCountDrawing(this));
    }

    @Override
    public String inWords() {
        return scenes.stream().map(scene -> "%s. %s".formatted(scene.name(), scene.counts().stream().map(BendCountPicture::inWords)
            .collect(Collectors.joining(" ")))).collect(Collectors.joining(" "));
    }

    private static String inWords(BendCount count) {
        StringBuilder words = new StringBuilder("%s: %s bends a head on average".formatted(count.habit(), Words.fixed(count.meanBends(), 2)));
        for (int k = 0; k < count.shares().size(); k++) {
            words.append(", %s took %s".formatted(percent(count.shares().get(k)), bends(k, count.shares().size())));
        }
        return words.append(count.note().isEmpty() ? "" : "; " + count.note()).append('.').toString();
    }

    static String percent(double share) {
        return Words.fixed(100 * share, 0) + " %";
    }

    static String bends(int part, int parts) {
        return part + 1 == parts ? parts + " or more" : Integer.toString(part + 1);
    }
}
