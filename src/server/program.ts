/** Which program this is. */

/**
 * Written in by the build: SHA-256 over all that the program is made of, its sources and the list of its packages with their
 * versions (`scripts/build.mjs`). Sources that run without a build have none.
 */
declare const POUCHFUL_PROGRAM: string | undefined;

/**
 * The mark of this very program on this Node; undefined where it was not built. A program whose check of a record differs in
 * anything has another: the check is made of sources, of packages, and of what Node takes for a letter.
 */
export const PROGRAM: string | undefined =
  typeof POUCHFUL_PROGRAM === 'string' && POUCHFUL_PROGRAM !== ''
    ? `${POUCHFUL_PROGRAM} ${process.version}`
    : undefined;
