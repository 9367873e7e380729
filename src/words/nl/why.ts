import type { Why } from '../en/why.ts';
import type { Figures } from '../figures.ts';

export const why = (f: Figures): Why => ({
  tabs: {
    all: 'Vragen over dit mengsel',
    why: 'Waarom',
    wishes: 'Wensen',
    trade: 'Meer of minder',
    versions: 'Versies',
    refusals: 'Als er iets blijft liggen',
    sharing: 'Meer dieren',
    change: 'Overstap',
  },
  heading: 'Waarom het mengsel zo is',
  unreadable: 'Zo kan het mengsel niet worden gelezen; hierboven staat waarom.',
  noMix: 'Geen mengsel voldoet aan deze regels. Wat botst en wat helpt, staat hoger op deze pagina.',
  elsewhere: 'Dit gaat over het beste mengsel. Het mengsel op het scherm is een ander.',
  fit: 'Het mengsel passend maken',
  nothing: 'Niets houdt het tegen.',
  best: {
    wishes:
      'Het beste mengsel vervult je wensen zo goed als het met deze ingrediënten kan; geen grens staat in de weg.',
    nearest: 'Dichter bij je wensen komt geen mengsel; geen grens staat in de weg.',
    cheapest: 'Goedkoper kan niet; geen grens maakt het mengsel duurder.',
    varied: 'Gevarieerder kan het met deze ingrediënten niet; geen grens staat in de weg.',
  },
  holding: (n) =>
    f.form(n, {
      one: 'Eén grens houdt het beste mengsel tegen. Grenzen voor voedingsstoffen zijn er voor het dier: wijzig er alleen een als je weet waarom.',
      other: `${f.number(n)} grenzen houden het beste mengsel tegen, de sterkste eerst. Grenzen voor voedingsstoffen zijn er voor het dier: wijzig er alleen een als je weet waarom.`,
    }),
  list: 'Grenzen die het mengsel tegenhouden',
  free: 'Aan een grens, zonder gevolg',
  freeList: 'Grenzen die niets kosten',
  held: (food, share) => `${food}: vastgehouden op ${f.percent(share, 1)}.`,
  heldFree: (food, share, free) =>
    `${food}: vastgehouden op ${f.percent(share, 1)}. Losgelaten zou het ${f.percent(free, 1)} worden, en het mengsel beter.`,
  letGo: 'Loslaten',
  letGoOf: (food) => `Loslaten: ${food}`,
  foreign:
    'Deze regel komt van de behoefte van een ander dier van dit mengsel; je wijzigt hem daar, onder Behoefte.',
  raise: (to) => `Grens naar ${to} verhogen`,
  lower: (to) => `Grens naar ${to} verlagen`,
  raiseOf: (to, what) => `Grens naar ${to} verhogen: ${what}`,
  lowerOf: (to, what) => `Grens naar ${to} verlagen: ${what}`,
});
