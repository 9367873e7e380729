/**
 * How long a page may take to come to a state, in ms. What is waited for takes some seconds at most on a quiet machine;
 * this only keeps a test that waits in vain from waiting for ever.
 */
export const PATIENCE_MS = 25_000;
