import type { ChangeOver } from '../en/change-over.ts';
import type { Figures } from '../figures.ts';

export const changeOver = (f: Figures): ChangeOver => ({
  heading: 'Umstellung',
  intro: 'Vom jetzigen Futter zu dieser Mischung, jeden Tag ein wenig mehr.',
  introBeside:
    'Vom jetzigen Futter zu dieser Mischung und dem, was daneben gefüttert wird, jeden Tag ein wenig mehr.',
  fresh: (foods) =>
    `Frisches gibt es weiter wie bisher; es zählt in diesen Tagen weder in den Gramm noch in den Bereichen: ${f.list(foods)}.`,
  first: {
    none: 'Keine Mischung hält diese Regeln ein. Was nicht zusammenpasst und was hilft, steht weiter oben; danach wird der Plan gemacht.',
    out: 'Die Mischung ist so nicht im Bereich. Mach sie zuerst passend; danach wird der Plan gemacht.',
  },
  choose: 'Wähle, was jetzt gefüttert wird.',
  sayDaily: 'Sag, wie viel am Tag gefüttert wird.',
  title: (from, to) => `Von ${from} zu ${to}`,
  partly: (food, what) =>
    `Bei manchen Zutaten in ${food} ist nicht bekannt, wie viel sie davon enthalten: ${f.list(what)}. Was bekannt ist, zählt als das Mindeste.`,
  partlyMore: (food, what, more) =>
    `Bei manchen Zutaten in ${food} ist nicht bekannt, wie viel sie davon enthalten: ${what.join(', ')} und ${f.number(more)} weitere. Was bekannt ist, zählt als das Mindeste.`,
  fromMix: 'wie bei dieser Mischung angegeben',
  fromAnimal: (animal) => `was ${animal} bekommt`,
  fields: {
    present: 'Jetziges Futter',
    choose: 'Wählen…',
    table: 'Etwas aus den Tabellen…',
    days: 'Tage',
    daysHint: '10 bis 14 sind üblich (übliche Praxis, ohne Quelle)',
    first: 'Erster Tag',
    daily: 'Futter am Tag',
    step: 'Gewogen in Schritten von',
    search: 'Das jetzige Futter in den Tabellen suchen',
    example: 'Hafer, Linsen, Mais…',
    searching: 'Sucht…',
    found: (n) => f.count(n, { one: 'Treffer', other: 'Treffer' }),
    nowFed: (food) => `Wird jetzt gefüttert: ${food}`,
    pick: 'Wählen',
    withPellet: (mix, beside) => `${mix} mit ${beside.join(', ')}, wie gefüttert`,
    alone: (mix) => `${mix} allein`,
  },
  daily: (grams, step, near) =>
    `${f.grams(grams)} geht nicht in Schritten von ${f.grams(step)} auf: Nimm ${f.either(near.map((g) => f.grams(g)))} oder einen feineren Schritt der Waage.`,
  standing: {
    fine: { brief: 'drin', words: 'im Bereich' },
    near: { brief: 'knapp daneben', words: 'knapp außerhalb, durch das Runden' },
    breaks: { brief: 'außerhalb', words: 'außerhalb des Bereichs' },
  },
  picture: {
    bars: (days, parts, inRange) =>
      `${f.count(days, { one: 'Balken', other: 'Balken' })}, einer für jeden Tag: ${parts.join(', ')}; ${f.count(inRange, { one: 'Tag ist', other: 'Tage sind' })} im Bereich. Alle Zahlen stehen in der Tabelle darunter.`,
    percent: (part) => f.percent(part),
  },
  plan: {
    done: (day) => `Fertig umgestellt ist am ${f.day(day)}.`,
    finer: 'Eine Waage mit feinerem Schritt hält sich genauer an den Plan.',
    both: (food) =>
      `${food} ist das jetzige Futter und wird auch neben der Mischung gefüttert; es wird zusammen gewogen.`,
    why: 'Warum Tage außerhalb des Bereichs sind',
    unchecked: 'Nicht geprüft',
    print: 'Plan drucken',
    caption: (daily) => `Was jeden Tag abgewogen wird, zusammen ${f.grams(daily)}`,
    day: 'Tag',
    range: 'Bereich',
    fed: 'Gefüttert',
    watch: 'Worauf zu achten ist',
  },
});
