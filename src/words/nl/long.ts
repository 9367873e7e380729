import type { Long } from '../en/long.ts';
import type { Figures } from '../figures.ts';

export const long = (f: Figures): Long => ({
  doing: {
    aims: 'Het mengsel dat aan je wensen voldoet wordt gezocht…',
    best: 'Het beste mengsel wordt gezocht…',
    spans: 'Het mengsel is gevonden. Nu wordt berekend hoe ver elk aandeel mag schuiven…',
    conflict: 'Geen mengsel houdt al deze grenzen aan. Gezocht wordt wat elkaar in de weg zit…',
    remedies: 'Geen mengsel houdt al deze grenzen aan. Geprobeerd wordt wat helpt…',
    points: 'Mengsels tussen die twee worden gezocht…',
    alone: 'Het beste mengsel voor elk dier wordt gezocht…',
    together: 'Eén mengsel dat voor allemaal past wordt gezocht…',
    fewest: 'Zo weinig mogelijk toevoegingen worden gezocht…',
    lightest: 'Zo licht mogelijke toevoegingen worden gezocht…',
  },
  steps: (done, of) => `Stap ${f.number(done)} van hoogstens ${f.number(of)}.`,
  found: {
    some: 'Het beste tot nu toe: een mengsel dat alle grenzen aanhoudt. Hoeveel beter het nog kan, is nog niet bekend.',
    nearest: (percent) =>
      `Het beste tot nu toe: een mengsel dat alle grenzen aanhoudt. Het kan nog hoogstens ${f.percent(percent, 0)} dichter bij je wensen komen.`,
    cheapest: (price, less) =>
      `Het beste tot nu toe: ${f.money(price)} per kg. Het kan nog hoogstens ${f.money(less)} per kg goedkoper worden.`,
    varied: (percent) =>
      `Het beste tot nu toe: een mengsel dat alle grenzen aanhoudt. Het kan nog hoogstens ${f.percent(percent, 0)} gevarieerder worden.`,
    fewest: (n, least) =>
      `Tot nu toe gevonden: ${f.count(n, { one: 'toevoeging', other: 'toevoegingen' })} voor alle dieren samen. Minder dan ${f.number(least)} is niet genoeg.`,
    lightest: (grams, least) =>
      `Tot nu toe gevonden: ${f.grams(grams, 1)} toevoegingen op 100 g basis. Minder dan ${f.grams(least, 1)} is niet genoeg.`,
  },
  stopHere: 'Hier stoppen',
  goOn: 'Verder zoeken',
  stopped: {
    nothing: 'Gestopt voordat er iets gevonden was.',
    found: 'Gestopt. Dit is het beste dat tot dan gevonden was; of er niets beters is, is niet bewezen.',
    points: 'Gestopt. Tussen die twee kunnen nog meer mengsels liggen.',
    notSure: 'Gestopt. Wat in de weg zit is gevonden; misschien helpt er nog meer.',
  },
  whyLater: 'Wat het beste mengsel tegenhoudt, wordt berekend zodra dat mengsel gevonden is.',
  took: 'Het past: alle grenzen zijn aangehouden. Het is het beste dat tot het stoppen gevonden was; misschien is er iets beters.',
});
