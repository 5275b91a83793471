/**
 * The learner's own system before it is filled: a form, the scenario that comes of it, what to expect of its start-up, and
 * what to have ready. A forecast here is never leave to move fish: only two passing tests are.
 */
@org.jspecify.annotations.NullMarked
package startwater.rehearse;
