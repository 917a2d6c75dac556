package noctuary.cli;

import java.io.PrintWriter;
import java.util.List;
import noctuary.fact.Problem;

/** Problems as a keeper reads them: where, what, what to do. */
final class ProblemList {
    private ProblemList() {}

    static void print(PrintWriter out, List<Problem> problems) {
        for (Problem problem : problems) {
            out.println(Plain.text(problem.where()) + ": " + Plain.text(problem.what()));
            if (!problem.hint().isEmpty()) {
                out.println("    " + Plain.text(problem.hint()));
            }
        }
    }

    static List<Problem> faults(List<Problem> problems) {
        return problems.stream().filter(Problem::isFault).toList();
    }

    static String count(long n, String one, String many) {
        return n + " " + (n == 1 ? one : many);
    }
}
