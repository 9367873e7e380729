/** Why a lot may be barred, and what to mind with it then. */
/** Why a lot may be barred, in the words that are kept. */
export const BAR_REASONS = {
  recalled: 'Recalled',
  infested: 'Infested',
  spoiled: 'Spoiled or mouldy',
} as const;

export type BarReason = keyof typeof BAR_REASONS;

/** "infested: moths in the bag". */
export function barWords(reason: BarReason, note: string): string {
  return note.trim() ? `${reason}: ${note.trim()}` : reason;
}

/** What to mind with a lot that was barred for a reason like this; undefined where nothing is known. */
export function barAdvice(why: string): { readonly words: string; readonly source: string } | undefined {
  const reason = Object.keys(BAR_REASONS).find((r) => why.startsWith(r)) as BarReason | undefined;
  if (reason === 'infested')
    return {
      words:
        'Keep it shut and throw it away outdoors. Mites leave a brownish dust and a smell of mint, and their dust can set off allergies in people and animals: do not stir it up. Look through what stood beside it.',
      source: 'Laboklin, VetInfo: storage mites (dust, smell, allergies; dogs and people)',
    };
  if (reason === 'spoiled')
    return {
      words:
        'Throw all of it away, not only what looks mouldy: threads and poisons of mould reach further than the eye. Do not smell at it closely or shake it; the spores and the dust can harm the airways.',
      source: 'USDA FSIS, Molds on Food (from memory)',
    };
  if (reason === 'recalled')
    return {
      words: 'Keep the pack and its number until the seller or the authority has answered.',
      source: 'common practice, no source',
    };
  return undefined;
}
