import type { ChangeOver } from '../en/change-over.ts';
import type { Figures } from '../figures.ts';

export const changeOver = (f: Figures): ChangeOver => ({
  heading: 'Overstap',
  intro: 'Van het huidige voer naar dit mengsel, elke dag een beetje meer.',
  introBeside:
    'Van het huidige voer naar dit mengsel en wat ernaast wordt gevoerd, elke dag een beetje meer.',
  fresh: (foods) =>
    `Vers voer gaat door als altijd; het telt deze dagen niet mee in de grammen en ook niet in het bereik: ${f.list(foods)}.`,
  first: {
    none: 'Geen mengsel voldoet aan deze regels. Wat botst en wat helpt, staat hoger op deze pagina; daarna wordt het plan gemaakt.',
    out: 'Het mengsel is zo niet binnen bereik. Maak het eerst passend; daarna wordt het plan gemaakt.',
  },
  choose: 'Kies wat er nu wordt gevoerd.',
  sayDaily: 'Zeg hoeveel er per dag wordt gevoerd.',
  title: (from, to) => `Van ${from} naar ${to}`,
  partly: (food, what) =>
    `Van sommige ingrediënten in ${food} is niet bekend hoeveel ze hiervan bevatten: ${f.list(what)}. Wat bekend is, telt als het minste.`,
  partlyMore: (food, what, more) =>
    `Van sommige ingrediënten in ${food} is niet bekend hoeveel ze hiervan bevatten: ${what.join(', ')} en nog ${f.number(more)}. Wat bekend is, telt als het minste.`,
  fromMix: 'zoals bij dit mengsel staat',
  fromAnimal: (animal) => `wat ${animal} krijgt`,
  fields: {
    present: 'Huidig voer',
    choose: 'Kiezen…',
    table: 'Iets uit de tabellen…',
    days: 'Dagen',
    daysHint: '10 tot 14 is gebruikelijk (gangbare praktijk, geen bron)',
    first: 'Eerste dag',
    daily: 'Voer per dag',
    step: 'Gewogen in stappen van',
    search: 'Het huidige voer in de tabellen zoeken',
    example: 'haver, linzen, mais…',
    searching: 'Zoekt…',
    found: (n) => f.count(n, { one: 'resultaat', other: 'resultaten' }),
    nowFed: (food) => `Wordt nu gevoerd: ${food}`,
    pick: 'Kiezen',
    withPellet: (mix, beside) => `${mix} met ${beside.join(', ')}, zoals gevoerd`,
    alone: (mix) => `${mix} alleen`,
  },
  daily: (grams, step, near) =>
    `${f.grams(grams)} is geen heel aantal stappen van ${f.grams(step)}: neem ${f.either(near.map((g) => f.grams(g)))}, of een fijnere stap van de weegschaal.`,
  standing: {
    fine: { brief: 'binnen', words: 'binnen bereik' },
    near: { brief: 'net buiten', words: 'net buiten, door afronden' },
    breaks: { brief: 'buiten', words: 'buiten bereik' },
  },
  picture: {
    bars: (days, parts, inRange) =>
      `${f.count(days, { one: 'balk', other: 'balken' })}, één voor elke dag: ${parts.join(', ')}; ${f.count(inRange, { one: 'dag is', other: 'dagen zijn' })} binnen bereik. In de tabel hieronder staan alle cijfers.`,
    percent: (part) => f.percent(part),
  },
  plan: {
    done: (day) => `De overstap is klaar op ${f.day(day)}.`,
    finer: 'Een weegschaal met een fijnere stap houdt zich beter aan het plan.',
    both: (food) =>
      `${food} is het huidige voer en wordt ook naast het mengsel gevoerd; het wordt samen gewogen.`,
    why: 'Waarom dagen buiten bereik zijn',
    unchecked: 'Niet gecontroleerd',
    print: 'Plan afdrukken',
    caption: (daily) => `Wat je elke dag afweegt, samen ${f.grams(daily)}`,
    day: 'Dag',
    range: 'Bereik',
    fed: 'Gevoerd',
    watch: 'Waar je op let',
  },
});
