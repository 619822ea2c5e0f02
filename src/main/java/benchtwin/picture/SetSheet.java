package benchtwin.picture;

import java.util.List;
import java.util.stream.Collectors;

/**
 * All pictures of one player's set on one sheet, one below the other.
 * @param player   whose set
 * @param pictures from top to bottom, at least one, all of that player
 */
public record SetSheet(String player, List<SetPicture> pictures) implements Picture {

    /**
     * Checks that the pictures belong together.
     * @throws IllegalArgumentException naming what is missing or cannot be
     */
    public SetSheet {
        player = Words.required("player", player);
        pictures = List.copyOf(pictures);
        if (pictures.isEmpty()) {
            throw new IllegalArgumentException("a sheet needs at least one picture");
        }
        for (SetPicture picture : pictures) {
            if (!picture.player().equals(player)) {
                throw new IllegalArgumentException(
                    "a picture of %s cannot be on the sheet of %s".formatted(picture.player(), player));
            }
        }
    }

    @Override
    public String title() {
        return "The set of " + player;
    }

    @Override
    public String inWords() {
        return pictures.stream().map(picture -> SetSheetDrawing.heading(picture) + ". " + picture.inWords())
            .collect(Collectors.joining(" "));
    }

    @Override
    public String svg() {
        Fonts.require();
        return SvgSheet.text(this, new SetSheetDrawing(this));
    }

    @Override
    public byte[] png() {
        Fonts.require();
        return PngSheet.bytes(new SetSheetDrawing(this));
    }
}
