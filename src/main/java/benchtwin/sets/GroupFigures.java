package benchtwin.sets;

import benchtwin.club.GroupRule;
import benchtwin.club.Quantity;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How alike the clubs of a group are.
 * @param group              its name
 * @param rule               how firmly it keeps to one model of head and shaft
 * @param built              how many of its clubs are built
 * @param headModels         models of their heads, each once
 * @param shaftModels        models of their shafts, each once
 * @param frequencySpreadCpm standard deviation of frequency less target, cpm; empty with fewer than two such clubs
 * @param swing              what their swing is held in, if in one thing
 * @param swingSpread        standard deviation of swing weight (points) or butt inertia (kg·cm²) less target
 * @param shaftMassSpreadG   standard deviation of the raw shafts' mass, g
 */
public record GroupFigures(String group, GroupRule rule, int built, List<String> headModels, List<String> shaftModels,
                           OptionalDouble frequencySpreadCpm, Optional<Quantity> swing, OptionalDouble swingSpread,
                           OptionalDouble shaftMassSpreadG) {

    public GroupFigures {
        headModels = List.copyOf(headModels);
        shaftModels = List.copyOf(shaftModels);
    }
}
