/** Random ids for a library that asks for them and makes no use of them. */

/**
 * Runs what asks for `crypto.randomUUID`, also on a page to which the browser lends none (it comes neither from https
 * nor from localhost). What is lent instead is always the same, so it serves only where the ids are not used.
 */
export function withRandomIds<T>(make: () => T): T {
  if (typeof crypto.randomUUID === 'function') return make();
  const randomUUID = () => '00000000-0000-4000-8000-000000000000';
  Object.defineProperty(crypto, 'randomUUID', { value: randomUUID, configurable: true });
  try {
    return make();
  } finally {
    Reflect.deleteProperty(crypto, 'randomUUID');
  }
}
