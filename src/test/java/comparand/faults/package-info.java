/** What is left of a run that something stops: kills, full disks, places that may not be written. */
@NullMarked
package comparand.faults;

import org.jspecify.annotations.NullMarked;
