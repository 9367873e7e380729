/** Names and limits of the files in which a household leaves and comes in. */

export const HOUSEHOLD_FORMAT = 'pouchful-household';
export const PART_FORMAT = 'pouchful-part';
/** Of the format of both; one more whenever an older program could not read it. */
export const FORMAT_VERSION = 3;
/** Bytes of a file that is brought in, at most. */
export const MOST_FILE_BYTES = 50_000_000;
