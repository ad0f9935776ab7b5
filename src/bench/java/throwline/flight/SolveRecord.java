package throwline.flight;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import throwline.liftingline.InfluenceMatrix;
import throwline.liftingline.LiftingLineProblem;
import throwline.liftingline.LiftingLineSolution;
import throwline.liftingline.LiftingLineSolver;
import throwline.liftingline.SolverSettings;
import throwline.model.Model;
import throwline.section.AirfoilLibrary;
import throwline.section.SectionAerodynamics;

/** Every lifting line that a study solves, wing and tail, in its order, to be solved again without all else. One thread. */
public final class SolveRecord {

    private final List<InfluenceMatrix> matrices = new ArrayList<>();
    private final List<Solve> solves = new ArrayList<>();

    /** One solve: by which solver, what, from where. */
    private record Solve(int solver, LiftingLineProblem problem, Optional<LiftingLineSolution> start) {}

    /** A model whose solves are noted here. */
    public Airframe airframe(Model model, AirfoilLibrary airfoils, SectionAerodynamics sections) {
        return new Airframe(model, airfoils, sections, List.of(), Noting::new);
    }

    /** Number of solves noted. */
    public int size() {
        return solves.size();
    }

    /** Solvers as they were before the first solve. */
    public List<LiftingLineSolver> solvers() {
        return matrices.stream()
                .map(matrix -> new LiftingLineSolver(matrix, SolverSettings.standard()))
                .toList();
    }

    /**
     * Solves everything again.
     *
     * @param solvers from {@link #solvers}, not used before
     * @return all steps that it took
     */
    public int replay(List<LiftingLineSolver> solvers) {
        int steps = 0;
        for (Solve solve : solves) {
            steps += solvers.get(solve.solver)
                    .solve(solve.problem, solve.start)
                    .status()
                    .iterations();
        }
        return steps;
    }

    private final class Noting extends LiftingLineSolver {
        private final int number = matrices.size();

        Noting(InfluenceMatrix matrix) {
            super(matrix, SolverSettings.standard());
            matrices.add(matrix);
        }

        @Override
        public LiftingLineSolution solve(LiftingLineProblem problem, Optional<LiftingLineSolution> start) {
            solves.add(new Solve(number, problem, start));
            return super.solve(problem, start);
        }
    }
}
