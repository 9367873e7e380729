/** Which program this is. */

/**
 * Written in by the build: SHA-256 over all that the program is made of, its sources and the list of its packages with their
 * versions (`scripts/build.mjs`). Sources that run without a build have none.
 */
declare const POUCHFUL_PROGRAM: string | undefined;

/**
 * The mark of a program on this Node. A program whose check of a record differs in anything has another: the check is made of
 * sources, of packages, and of what Node takes for a letter.
 * @param sum over what it is made of
 */
export const markOf = (sum: string): string => `${sum} ${process.version}`;

/** The mark of this very program; undefined where it was not built. */
export const PROGRAM: string | undefined =
  typeof POUCHFUL_PROGRAM === 'string' && POUCHFUL_PROGRAM !== '' ? markOf(POUCHFUL_PROGRAM) : undefined;
