/** How long texts may be, in letters as JavaScript counts them: what fields take is what the household keeps. */

/** Of what names a thing. */
export const MOST_NAME = 200;
/** Of free text: a few paragraphs. */
export const MOST_WORDS = 4000;
