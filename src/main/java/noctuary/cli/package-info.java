/**
 * Arguments, clock, progress, messages, exit codes; nothing else.
 *
 * <p>Start at {@link noctuary.cli.Main}.
 */
package noctuary.cli;
