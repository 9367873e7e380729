/** Where a request carries its device's token: the header of a command-line client, or the cookie of a page. */
import type { Context } from 'hono';
import { getCookie, setCookie } from 'hono/cookie';

const COOKIE = 'pouchful_';
/** Most cookies looked at, each of which is a question to the store. */
const MOST_COOKIES = 4;
/** The longest that browsers keep a cookie; it is set anew while the device is used. In seconds. */
const KEPT = 400 * 24 * 60 * 60;

/** The tokens that a request carries. Where it has an `Authorization` header, its cookies do not count. */
export function tokensOf(c: Context): readonly string[] {
  const header = c.req.header('authorization');
  if (header !== undefined) return /^Bearer +(\S+)$/i.exec(header)?.slice(1) ?? [];
  return Object.entries(getCookie(c))
    .filter(([name]) => name.startsWith(COOKIE))
    .map(([, value]) => value)
    .slice(0, MOST_COOKIES);
}

/** Hands a token to a page. Cookies do not tell ports apart, so that the name does: two servers keep out of each other's way. */
export function setToken(c: Context, token: string, secure: boolean): void {
  const port = /:(\d+)$/.exec(c.req.header('host') ?? '')?.[1] ?? '';
  setCookie(c, COOKIE + port, token, { path: '/', httpOnly: true, sameSite: 'Strict', secure, maxAge: KEPT });
}
