/** A text that was written in English, with its usual phrases in another language: longer phrases go before shorter. */
export function replaced(
  text: string,
  phrases: readonly (readonly [english: string, said: string])[],
): string {
  const byLength = [...phrases].sort(([a], [b]) => b.length - a.length);
  // Each place is said once: what was put in is not looked at again.
  let parts: readonly (string | { readonly said: string })[] = [text];
  for (const [english, said] of byLength)
    parts = parts.flatMap((part) => {
      if (typeof part !== 'string' || !part.includes(english)) return [part];
      return part.split(english).flatMap((rest, i) => (i === 0 ? [rest] : [{ said }, rest]));
    });
  return parts.map((part) => (typeof part === 'string' ? part : part.said)).join('');
}
