/** What learners did, on disk: one append-only file a learner, its index, and the replay of what is in it. */
package startwater.record;
