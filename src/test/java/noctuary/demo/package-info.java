/**
 * The simulator behind the demo journal: an invented keeper's nights on the real sky, frame by frame, from fixed seeds.
 *
 * <p>Start at {@link noctuary.demo.DemoJournal}. What is planted stands in {@code plan.yaml}; what every written file
 * therefore holds stands in {@code truth.csv}. This package refuses to know how the product measures.
 */
package noctuary.demo;
