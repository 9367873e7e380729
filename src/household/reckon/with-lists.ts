/** A household with some of its lists in exchange for others. */

/** Lists that have not come yet are passed on unread: a spread would read, and so wait for, all of them. */
export function withLists<H extends object>(house: H, lists: Partial<H>): H {
  const all = { ...Object.getOwnPropertyDescriptors(house), ...Object.getOwnPropertyDescriptors(lists) };
  return Object.defineProperties({}, all) as H;
}
