import type { Sharing } from '../en/sharing.ts';
import type { Figures } from '../figures.ts';

export const sharing = (f: Figures): Sharing => ({
  heading: 'Meer dieren',
  each: 'Maak voor elk een mengsel: kopieer dit en kies voor elke kopie één dier.',
  none: 'Vanaf twee dieren is er één basismengsel te vinden voor allemaal, met het weinige dat elk erbij krijgt. Er is nog geen dier ingevuld: <add>voeg er een toe</add>.',
  one: 'Vanaf twee dieren is er één basismengsel te vinden voor allemaal, met het weinige dat elk erbij krijgt. Er is tot nu toe één dier ingevuld: <add>voeg er nog een toe</add>.',
  chosenNone:
    'Dit mengsel is nog voor geen dier. Kies boven aan deze pagina voor wie het is, twee of meer. Dan wordt er één basismengsel gezocht voor allemaal, met het weinige dat elk erbij krijgt.',
  chosenOne:
    'Dit mengsel is voor één dier. Kies boven aan deze pagina voor wie het is, twee of meer. Dan wordt er één basismengsel gezocht voor allemaal, met het weinige dat elk erbij krijgt.',
  base: {
    weighings: (n) =>
      f.count(n, { one: 'toevoeging, apart gewogen.', other: 'toevoegingen, apart gewogen.' }),
    suits: (animals) => `Eén mengsel past zonder toevoegingen bij ${f.list(animals)}.`,
    unverified: 'Wat niet geldt of niet is gecontroleerd',
    notProved: 'Misschien kan het met minder.',
    base: 'Het basismengsel',
    mix: 'Het mengsel',
    caption: (batch, step) => `${f.grams(batch)} in stappen van ${f.grams(step)}`,
    food: 'Ingrediënt',
    share: 'Aandeel',
    grams: 'Gram',
    shareOf: (share) => `${f.fixed(share, 1)} %`,
    takeBase: 'Het basismengsel nemen',
    take: 'Dit mengsel nemen',
    takeHint:
      'Daarna is het mengsel op deze pagina alleen de basis. Het kan buiten bereik zijn tot de toevoegingen erin zitten.',
    tookBase: 'Het mengsel heeft nu de aandelen van de basis.',
    took: 'Het mengsel heeft nu deze aandelen.',
    tookNotice: 'Het mengsel is de gedeelde basis. “Ongedaan maken” draait het terug.',
    adds: 'Wat elk erbij krijgt',
    costs: 'Wat het elk kost',
    asItIs: 'Krijgt de basis zoals die is.',
    addedFor: (animal) => `Erbij voor ${animal}`,
    to100: (grams) => `Bij ${f.grams(grams)} basis`,
    toBatch: (grams) => `Bij ${f.grams(grams)}`,
    rounded: (step) =>
      `Afgerond op hele stappen van ${f.grams(step)}, de dichtstbijzijnde waarmee de regels gelden, als die er zijn.`,
    weighedIn: '✓ Zoals gewogen binnen bereik.',
    weighedOut: (sentences) =>
      `! Zoals gewogen net buiten: ${sentences.join(' ')} Een fijnere stap van de weegschaal of een grotere batch kan helpen.`,
  },
  cost: {
    same: 'Het mengsel is zoals het beste eigen mengsel zou zijn.',
    sameDearer: (money) =>
      `Het mengsel is zoals het beste eigen mengsel zou zijn, en kost ${f.money(money)} meer per kg.`,
    sameCheaper: (money) =>
      `Het mengsel is zoals het beste eigen mengsel zou zijn, en kost ${f.money(money)} minder per kg.`,
    other: (percent) =>
      `${f.figure(percent)} % van het mengsel is iets anders dan in het beste eigen mengsel.`,
    otherDearer: (percent, money) =>
      `${f.figure(percent)} % van het mengsel is iets anders dan in het beste eigen mengsel, en het kost ${f.money(money)} meer per kg.`,
    otherCheaper: (percent, money) =>
      `${f.figure(percent)} % van het mengsel is iets anders dan in het beste eigen mengsel, en het kost ${f.money(money)} minder per kg.`,
  },
  found: {
    notProved:
      'Misschien volstaan minder of lichtere toevoegingen: het zoeken stopte voor dat duidelijk was.',
    aimsLeft: 'Wensen gelden alleen waar één mengsel bij allemaal past; hier golden ze niet.',
    notDropped:
      'Of de regels gelden als er een ingrediënt blijft liggen, is alleen bekeken voor het beste mengsel van elk dier.',
    forOne: (animal, sentence) => `Voor ${animal}: ${sentence}`,
    nothing: 'geen dier iets',
    money: (animal, money) => `${animal} ${f.figure(money)} meer per kg`,
    fromWanted: (animal, percent) => `${animal} ${f.figure(percent)} % van de gewenste aandelen`,
    fromOwn: (animal, percent) => `${animal} ${f.figure(percent)} % van het beste eigen mengsel`,
    costs: (parts) => f.list(parts),
    addition: (grams, food) => `${f.figure(grams)} g ${food}`,
    gets: (animal, additions) => `${animal} krijgt ${f.list(additions)}`,
    oneMix: (cost) => `Samen één mengsel kost ${cost}; niets hoeft apart te worden gewogen.`,
    oneBase: (cost, extras) => `Samen één basis kost ${cost}; op 100 g daarvan: ${extras.join('; ')}.`,
    alone: (animal, verdict) => `Voor ${animal} is er ook alleen geen mengsel. ${verdict}`,
    noFood: (animals) =>
      `Er is niets dat ${f.list(animals)} allemaal mogen eten; elk heeft een eigen mengsel.`,
    noBase: (animals, most) =>
      `Geen basis past bij ${f.list(animals)}, ook niet met ${f.number(most)} g van welk ingrediënt ook op 100 g ervan; elk heeft een eigen mengsel.`,
  },
});
