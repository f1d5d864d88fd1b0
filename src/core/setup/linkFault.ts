/** Thrown while reading a link, to be turned into a sentence at the door. */
export class LinkFault extends Error {}
