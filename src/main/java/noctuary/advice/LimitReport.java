package noctuary.advice;

import java.util.List;
import java.util.Optional;

/**
 * What limits one entry.
 *
 * @param sharpness absent without a width from enough stars
 * @param depth absent where the noise of one exposure is not known in electrons, for the reason {@code whyNoDepth}
 * @param findings what stands out, largest first; one that says that nothing does; none where too little is known
 */
public record LimitReport(
        Optional<Budget> sharpness, Optional<Budget> depth, String whyNoDepth, List<Finding> findings) {
    public LimitReport {
        findings = List.copyOf(findings);
    }
}
