/** Item analysis over a class. Plain numbers in, plain numbers out. */
package startwater.classroom.stats;
