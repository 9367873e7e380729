import type { Why } from '../en/why.ts';
import type { Figures } from '../figures.ts';

export const why = (f: Figures): Why => ({
  tabs: {
    all: 'Fragen zu dieser Mischung',
    why: 'Warum',
    wishes: 'Wünsche',
    trade: 'Mehr oder weniger',
    versions: 'Versionen',
    refusals: 'Wenn etwas liegen bleibt',
    sharing: 'Mehrere Tiere',
    change: 'Umstellung',
  },
  heading: 'Warum die Mischung so ist',
  unreadable: 'So lässt sich die Mischung nicht lesen; oben steht, warum.',
  noMix: 'Keine Mischung hält diese Regeln ein. Was nicht zusammenpasst und was hilft, steht weiter oben.',
  elsewhere: 'Das Folgende gilt für die beste Mischung. Die Mischung auf dem Bildschirm ist eine andere.',
  fit: 'Die Mischung passend machen',
  nothing: 'Nichts hält sie auf.',
  best: {
    wishes:
      'Die beste Mischung erfüllt deine Wünsche so gut, wie es mit diesen Zutaten geht; keine Grenze steht im Weg.',
    nearest: 'Näher an deine Wünsche kommt keine Mischung; keine Grenze steht im Weg.',
    cheapest: 'Günstiger geht es nicht; keine Grenze macht die Mischung teurer.',
    varied: 'Abwechslungsreicher geht es mit diesen Zutaten nicht; keine Grenze steht im Weg.',
  },
  holding: (n) =>
    f.form(n, {
      one: 'Eine Grenze hält die beste Mischung auf. Grenzen für Nährstoffe sind für das Tier da: Ändere eine nur, wenn du weißt, warum.',
      other: `${f.number(n)} Grenzen halten die beste Mischung auf, die stärkste zuerst. Grenzen für Nährstoffe sind für das Tier da: Ändere eine nur, wenn du weißt, warum.`,
    }),
  list: 'Grenzen, die die Mischung aufhalten',
  free: 'An einer Grenze, ohne Folgen',
  freeList: 'Grenzen, die nichts kosten',
  held: (food, share) => `${food}: festgehalten bei ${f.percent(share, 1)}.`,
  heldFree: (food, share, free) =>
    `${food}: festgehalten bei ${f.percent(share, 1)}. Losgelassen wären es ${f.percent(free, 1)}, und die Mischung wäre besser.`,
  letGo: 'Loslassen',
  letGoOf: (food) => `Loslassen: ${food}`,
  foreign:
    'Diese Regel kommt vom Bedarf eines anderen Tieres dieser Mischung; ändern kannst du sie dort, unter Bedarf.',
  raise: (to) => `Grenze auf ${to} anheben`,
  lower: (to) => `Grenze auf ${to} senken`,
  raiseOf: (to, what) => `Grenze auf ${to} anheben: ${what}`,
  lowerOf: (to, what) => `Grenze auf ${to} senken: ${what}`,
});
