/** Refuses a JSON body that is nested deep, or that carries keys which are more than keys, before anything reads it. */
import type { MiddlewareHandler } from 'hono';
import { DEEPEST, isNestedTooDeep, plainFault } from '../household/shape/plain-json.ts';
import { words } from '../words/words.ts';

/** For all routes that take JSON; what is no JSON is left to the route to refuse. */
export function plainJsonBody(): MiddlewareHandler {
  return async (c, next) => {
    if (!/^\s*application\/([\w.+-]+\+)?json\b/i.test(c.req.header('content-type') ?? '')) return next();
    // Read once: the request keeps it for the route.
    const text = await c.req.text();
    if (isNestedTooDeep(text))
      return c.json({ field: '', message: words().access.refusal.bodyTooDeep(DEEPEST) }, 400);
    // Only a body that names one of them is worth reading twice; an escape may hide the name.
    if (/__proto__|prototype|constructor|\\u00/i.test(text)) {
      const fault = plainFault(parsed(text));
      if (fault) return c.json(fault, 400);
    }
    return next();
  };
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}
