package comparand.simulation;

/**
 * One reading at home.
 *
 * @param member the unit or case
 * @param reading counts the readings of one unit or case at one step, from 1
 * @param hospital empty on the bench
 * @param present whether it is of the device in use today
 * @param at the conditions, as recorded
 * @param drop mmHg
 */
record LocalRow(String member, int reading, String hospital, boolean present, Setting at, double drop) {}
