package noctuary.advice;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A measured total and the terms that make it up, as squares. What the known terms leave is the last term.
 *
 * @param unit of total and terms, as printed
 * @param terms largest first, those not known last
 */
public record Budget(String unit, double total, List<Term> terms) {
    public Budget {
        terms = List.copyOf(terms);
    }

    /** Share of the squared total, 0 to 1; absent for a term that is not known. */
    public OptionalDouble share(Term term) {
        return term.amount().isPresent() ? OptionalDouble.of(term.squared() / (total * total)) : OptionalDouble.empty();
    }

    public Optional<Term> term(String id) {
        return terms.stream().filter(t -> t.id().equals(id)).findFirst();
    }

    /** What is left of a total when terms are taken away in squares; absent when they take more than there is. */
    static OptionalDouble remainder(double total, List<Term> terms) {
        double left = total * total - terms.stream().mapToDouble(Term::squared).sum();
        return left >= 0 ? OptionalDouble.of(Math.sqrt(left)) : OptionalDouble.empty();
    }

    static Budget largestFirst(String unit, double total, List<Term> terms) {
        List<Term> sorted = new java.util.ArrayList<>(terms);
        sorted.sort(java.util.Comparator.comparingDouble(
                t -> t.amount().isPresent() ? -t.amount().getAsDouble() : 1));
        return new Budget(unit, total, sorted);
    }
}
