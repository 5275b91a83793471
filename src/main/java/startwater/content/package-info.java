/** Reads and checks the drills in {@code scenarios/} and the lessons in {@code lessons/}. */
package startwater.content;
