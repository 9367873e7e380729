import type { BodyWeight } from '../en/body-weight.ts';
import type { Figures } from '../figures.ts';

export const bodyWeight = (f: Figures): BodyWeight => ({
  title: 'Gewicht',
  weigh: (name) => `${name} wegen`,
  moment: (day, time) => `${day}, ${time}`,
  last: {
    none: (name) => `${name} is nog niet gewogen.`,
    today: (grams, time) => `Vandaag om ${time} gewogen: ${f.grams(grams, 1)}.`,
    yesterday: (grams) => `Gisteren gewogen: ${f.grams(grams, 1)}.`,
    on: (grams, day) => `Laatst gewogen op ${day}: ${f.grams(grams, 1)}.`,
  },
  gone: (name) => `${name} staat alleen nog in de aantekeningen. Wat gewogen is, blijft hieronder staan.`,
  pad: {
    title: 'Wat de weegschaal aangeeft',
    press: 'Eén druk bewaart het gewicht. Het omkaderde is het waarschijnlijkst.',
    pressTub: (tub) =>
      `Druk op wat de weegschaal met het bakje aangeeft. De ${f.grams(tub, 1)} daarvan gaan eraf.`,
    button: (grams) => `${f.grams(grams)}`,
    net: (grams) => `→ ${f.grams(grams, 1)}`,
    likeliest: 'het waarschijnlijkst',
    other: 'Een ander gewicht',
    otherTub: 'Een ander gewicht, met het bakje',
    keep: 'Bewaren',
    belowTub: (tub) =>
      `Dat is niet meer dan het bakje alleen weegt (${f.grams(tub, 1)}). Zit het dier erin? Of haalt je weegschaal het bakje er zelf af?`,
    first: 'Na de eerste weging staan hier knoppen rond het laatste gewicht.',
  },
  kept: (grams) => `${f.grams(grams, 1)} bewaard.`,
  keptTub: (grams, onScale) =>
    `${f.grams(grams, 1)} bewaard: ${f.grams(onScale, 1)} op de weegschaal, zonder het bakje.`,
  keptAfterOther: (grams, before) =>
    `${f.grams(grams, 1)} bewaard. De ${f.grams(before, 1)} van zojuist blijven ook in de lijst.`,
  ask: {
    title: 'Klopt dat?',
    today: (grams, last) => `${f.grams(grams, 1)}? Eerder vandaag was het ${f.grams(last, 1)}.`,
    yesterday: (grams, last) => `${f.grams(grams, 1)}? Gisteren was het ${f.grams(last, 1)}.`,
    on: (grams, last, day) => `${f.grams(grams, 1)}? Op ${day} was het ${f.grams(last, 1)}.`,
    kind: (grams, low, high) =>
      `${f.grams(grams, 1)}? Een volwassen dier van deze soort weegt ${f.grams(low)} tot ${f.grams(high)}.`,
    likely: (grams, low, high) =>
      `${f.grams(grams, 1)}? Naar wat bekend is, is ${f.grams(low, 0)} tot ${f.grams(high, 0)} waarschijnlijk.`,
    correct: 'Verbeteren',
    right: 'Het klopt',
    rightAlarm: 'Klopt het en is het dier zoveel kwijt, ga dan vandaag nog naar de dierenarts.',
  },
  questions: {
    title: 'Klopt dit?',
    of: (grams, day) =>
      `${f.grams(grams, 1)} op ${day} ligt ver van de gewichten ervoor en erna. Het telt pas mee als je zegt dat het klopt.`,
    right: (grams, day) => `Het klopt: ${f.grams(grams, 1)} op ${day}`,
    correct: (grams, day) => `Verbeteren: ${f.grams(grams, 1)} op ${day}`,
    said: (grams) => `${f.grams(grams, 1)} telt van nu af mee.`,
  },
  tub: {
    switch: 'In een bakje gewogen',
    hint: 'Een klein bakje houdt het dier op de weegschaal. Laat dit uit als je weegschaal het bakje er zelf aftrekt (tarra).',
    weigh: 'Gewicht van het lege bakje',
    once: 'Weeg het lege bakje één keer, droog en zonder strooisel.',
    same: (grams) => `Zoals de vorige keer: ${f.grams(grams, 1)}`,
    now: (grams) => `Het bakje weegt ${f.grams(grams, 1)}.`,
    again: 'Bakje opnieuw wegen',
    keep: 'Gewicht van het bakje bewaren',
  },
  alerts: {
    title: 'Waar je op moet letten',
    none: 'Er valt niets op.',
    doubt:
      'De laatste weging is twijfelachtig, dus er is nog niets te zeggen. Weeg nog een keer of beantwoord de vraag hierboven.',
    few: 'Nog te weinig wegingen om te zeggen of er iets opvalt.',
    vet: {
      today: 'Ga vandaag naar de dierenarts',
      days: 'Ga de komende dagen naar de dierenarts',
      'next visit': 'Vertel het bij het volgende bezoek aan de dierenarts',
    },
    fast: {
      loss: (name, percent) =>
        `${name} is binnen dagen ${f.percent(percent, 0)} van het gewicht kwijtgeraakt.`,
      gain: (name, percent) => `${name} is binnen dagen ${f.percent(percent, 0)} aangekomen.`,
    },
    shift: {
      loss: (name, percent) => `${name} weegt ${f.percent(percent, 0)} minder dan vroeger, en dat blijft zo.`,
      gain: (name, percent) => `${name} weegt ${f.percent(percent, 0)} meer dan vroeger, en dat blijft zo.`,
    },
    slow: {
      loss: (name, percent) => `${name} valt langzaam af, tot nu toe ${f.percent(percent, 0)}.`,
      gain: (name, percent) => `${name} komt langzaam aan, tot nu toe ${f.percent(percent, 0)}.`,
    },
    growth: {
      loss: (name) => `${name} is nog jong en komt niet aan zoals het hoort.`,
      gain: (name) => `${name} is nog jong en komt sneller aan dan te verwachten was.`,
    },
    fromTo: (from, to, since) =>
      `Eerst was het ${f.grams(from, 0)}, nu is het ${f.grams(to, 0)}; het begon rond ${since}.`,
    expectedIs: (from, to, on) =>
      `Minstens ${f.grams(from, 0)} was te verwachten; op ${on} was het ${f.grams(to, 0)}.`,
    weighAgain: 'Weeg nu nog een keer, zodat het getal zeker klopt. Klopt het, wacht dan niet.',
    look: 'Kijk of het dier eet, drinkt en beweegt zoals anders, kijk naar tanden, buik en keutels, en vertel dat aan de dierenarts.',
    gain: 'Aankomen kan ook verlies van spieren verbergen, of vocht of jongen zijn. Voel langs de rug en vraag het de dierenarts.',
    noDiagnosis: 'Dit zegt dat het gewicht veranderd is, niet waarom.',
    foundToo: 'Ook op een andere manier gevonden:',
    moreCertain: 'Hoe vaak zo’n waarschuwing niet klopt',
    oneIn: (animals) =>
      `Bij ongeveer één op de ${f.number(animals, 0)} dieren komt deze waarschuwing in een jaar zonder reden.`,
    timesAYear: (times) =>
      `Bij elk dier komt deze waarschuwing ongeveer ${f.number(times, 1)} keer per jaar zonder reden.`,
    hardlyEver: 'Bij minder dan één op de 1000 dieren komt deze waarschuwing in een jaar zonder reden.',
  },
  expected: {
    title: 'Te verwachten',
    autumn: (name) =>
      `${name} leeft bij daglicht en de dagen worden kort: een dalend gewicht hoort bij het seizoen. Daar is hier rekening mee gehouden.`,
    spring: (name) =>
      `De dagen worden langer: ${name} komt weer aan wat voor de winter verloren ging. Daar is hier rekening mee gehouden.`,
    'short days': (name) =>
      `In korte dagen komt een dier van deze soort aan. Voor ${name} is daar hier rekening mee gehouden.`,
    growth: (name) => `${name} groeit nog: een stijgend gewicht is zoals het hoort.`,
    pregnancy: (name) => `${name} is drachtig: een stijgend gewicht is zoals het hoort.`,
    nursing: (name) => `${name} zoogt: daarmee gaat het gewicht op en neer.`,
    birth: (name) => `${name} heeft geworpen: de plotselinge daling komt daarvan.`,
    anyway: 'Eet het dier minder of lijkt het ziek, ga dan toch naar de dierenarts.',
  },
  beside: {
    title: 'Om te vergelijken',
    kind: (species) => `Volwassen, ${species}`,
    range: (low, high) => `${f.grams(low)} tot ${f.grams(high)}`,
    noKind: 'Voor deze diersoort is er hier geen getal.',
    usual: (name) => `${name}, gezond`,
    usualNone: 'Nog niet gezegd',
    sayUsual: 'Geef het op onder “Over”',
    lately: 'Laatste 90 dagen',
    latelyRange: (low, high) =>
      low === high ? `ongeveer ${f.grams(low, 0)}` : `${f.grams(low, 0)} tot ${f.grams(high, 0)}`,
    own: 'Het gaat erom hoe het eigen gewicht van het dier verandert. Gezonde dieren van één soort verschillen veel.',
  },
  picture: {
    title: 'Plaatje',
    choose: 'Een weging in het plaatje',
    none: 'Geen weging in deze tijd.',
    at: (day, grams) => `${day}: ${f.grams(grams, 1)}.`,
    week: (day, low, high) => `Week vanaf ${day}: ${f.grams(low, 1)} tot ${f.grams(high, 1)}.`,
    trend: (grams, low, high) =>
      `Verloop ${f.bodyGrams(grams)} (${f.bodyGrams(low)} tot ${f.bodyGrams(high)}).`,
    unlikely: 'Lijkt onwaarschijnlijk, telt niet mee.',
    said: (from, to, first, last, n) =>
      `Gewichten van ${from} tot ${to}: ${f.count(n, { one: 'weging', other: 'wegingen' })}, verloop van ${f.grams(first, 0)} naar ${f.grams(last, 0)}.`,
    key: {
      dot: 'gewogen',
      dots: 'laagste tot hoogste van een week',
      trend: 'verloop, en hoe zeker het is',
      unlikely: 'onwaarschijnlijk, telt niet mee',
      alert: 'iets om op te letten',
      range: 'volwassen dieren van de soort',
    },
    table: 'Hetzelfde als tabel',
    columns: { day: 'Dag', week: 'Week vanaf', weighed: 'Gewogen', trend: 'Verloop', between: 'Tussen' },
    weighedRange: (low, high) => `${f.number(f.mass(low), 1)} tot ${f.grams(high, 1)}`,
    trendRange: (low: number, high: number) => `${f.bodyGrams(low)} tot ${f.bodyGrams(high)}`,
  },
  list: {
    title: 'Eerdere wegingen',
    none: 'Nog geen.',
    add: 'Een van een andere dag toevoegen',
    item: (grams) => f.grams(grams, 1),
    tub: (onScale, tub) => `${f.grams(onScale, 1)} op de weegschaal, bakje ${f.grams(tub, 1)}`,
    unlikely: 'onwaarschijnlijk, telt niet mee',
    sure: 'leek onwaarschijnlijk, bevestigd als juist',
    change: 'Verbeteren',
    changeOf: (grams, moment) => `${f.grams(grams, 1)} verbeteren, ${moment}`,
    deleteOf: (grams, moment) => `${f.grams(grams, 1)} verwijderen, ${moment}`,
    deleted: (grams) => `${f.grams(grams, 1)} verwijderd.`,
    corrected: (grams) => `Nu ${f.grams(grams, 1)}.`,
    added: (grams) => `${f.grams(grams, 1)} toegevoegd.`,
  },
  form: {
    add: 'Een weging van een andere dag',
    change: (moment) => `De weging van ${moment} verbeteren`,
    weight: 'Gewicht',
    weightTub: (tub) => `Op de weegschaal, met het bakje van ${f.grams(tub, 1)}`,
    day: 'Dag',
    time: 'Tijd',
    note: 'Notitie',
    noWeight: 'Zeg wat het dier woog.',
    noDay: 'Zeg op welke dag.',
    ahead: 'Dat ligt in de toekomst: een weging heeft een dag en een tijd die voorbij zijn.',
  },
});
