package comparand.document.talk.layout;

import comparand.document.talk.Part;

/**
 * A part in its place.
 *
 * @param size of its text
 * @param needed the height it takes at that size; more than that of the box if it runs over
 */
public record Placed(Part part, Box box, double size, double needed) {}
