/** What a learner can do, judged from marks, and what comes next. Pure: no clock, no files, no window. */
package startwater.course;
