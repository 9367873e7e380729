import type { FoodForms } from '../en/food-forms.ts';
import type { Figures } from '../figures.ts';

export const foodForms = (f: Figures): FoodForms => {
  const part = (share: number) => `${f.number(100 * share, 0)} %`;
  return {
    source: {
      dried: (source, moisture) => `${source}, gedroogd tot ${f.number(moisture)} % vocht, berekend`,
      by: (source, table, code, title) => `${source}, met ${table}, code ${code} ${title}`,
    },
    no: {
      sprouted:
        'Geen gepubliceerde factor zegt wat kiemen verandert; zoek liever een gemeten gekiemd ingrediënt in de tabellen.',
      blanched: (kind) =>
        `Voor geblancheerde ingrediënten van dit soort (${kind}) zijn er geen gepubliceerde factoren; zoek liever een gemeten ingrediënt in de tabellen.`,
      roasted: (kind) =>
        `Voor geroosterde ingrediënten van dit soort (${kind}) zijn er geen gepubliceerde factoren; zoek liever een gemeten ingrediënt in de tabellen.`,
      kinds: {
        leaf: 'blad',
        root: 'wortel',
        potato: 'aardappel',
        herb: 'kruiden',
        vegetable: 'groente',
        legume: 'peulvruchten',
        nut: 'noten',
        fruit: 'fruit',
        seed: 'zaden',
        animal: 'dierlijk',
        none: 'zonder groep',
      },
      weights:
        'Bij blancheren spoelt droge stof het water in, dus het vocht alleen is niet genoeg: weeg ervoor en erna (uitgelekt) en geef beide op.',
    },
    notes: {
      asGiven: 'zoals opgegeven',
      asChosen: 'zoals gekozen',
      rounded: (percent) =>
        `${f.number(percent)} % blijft, op 5 % afgerond; de spreiding is niet gepubliceerd`,
      boiled: (percent) =>
        `${f.number(percent)} % blijft na koken, op 5 % afgerond; de spreiding is niet gepubliceerd; kort geblancheerd blijft er meer`,
      noFactor: 'niet opgegeven: geen gepubliceerde factor',
      conserved: 'droge stof blijft (geen gepubliceerde factor)',
      rawNone: 'rauw zit er niets van in',
      freshNone: 'vers zit er niets van in',
      boundsOnly:
        'alleen grenzen: geen gepubliceerde factor; meer dan alle verloren droge stof kan niet weg zijn',
      nothingKnown:
        'niet opgegeven: geen gedroogd ingrediënt en geen tabel zegt hoeveel er bij drogen blijft',
      dryConserved: 'droge stof blijft',
      keptBy: (kept, source, code) => `${part(kept)} blijft (${source}, code ${code})`,
      keptMedian: (kept) =>
        `${part(kept)} blijft, de mediaan van ingrediënten die USDA SR28 vers en gedroogd heeft (geen gepubliceerde factor)`,
      spread: (kept, sd, figures) =>
        `${kept}; de gewone spreiding is ${part(sd)} van de waarde, uit ${f.number(figures)} gemeten cijfers`,
      tooWide: (kept, figures) =>
        `${kept}, maar ${f.number(figures)} gemeten cijfers liggen te ver uiteen voor één cijfer: alleen grenzen`,
    },
    combined: {
      mean: (sources, names) =>
        `gemiddelde van ${f.number(sources)} bronnen (toevallige effecten, DerSimonian en Laird 1986): ${names}`,
      chosen: (names) => `${names}, door jou gekozen`,
      contradictory: (said) =>
        `${said}. Het gegarandeerde minste en meeste spreken elkaar tegen en blijven weg`,
    },
    slips: {
      salt: 'misschien staat zout als natrium (zout is 2,5 keer het natrium)',
      quantity: 'het grootste is misschien voor 250 g, of het kleinste voor 40 g',
      energy: 'misschien staan kilojoules voor kilocalorieën',
      ten: 'misschien is een komma verschoven, of “per kg” staat voor “per 100 g”',
      hundred: 'misschien is een komma twee plaatsen verschoven',
      thousand: 'misschien staat mg voor g, of µg voor mg',
    },
    apart: {
      figure: (source, amount, unit) => `${source} ${amount} ${unit}`,
      said: (what, one, other, cause) => `${what}: ${one}, ${other}. ${cause}`,
      saidDry: (what, one, other, cause) => `${what}: ${one}, ${other} (in droge stof vergeleken). ${cause}`,
      crudeAsDietary: (less, more) =>
        `${less} lijkt ruwe celstof die als voedingsvezel staat; die is ongeveer zoveel meer. Vul het in als ruwe celstof, of volg ${more}.`,
      dietaryAsCrude: (more, less) =>
        `${more} lijkt voedingsvezel die als ruwe celstof staat: ${less} geeft bijna hetzelfde als voedingsvezel. Vul het in als voedingsvezel, of volg ${less}.`,
      slip: (more, factor, less, cause) =>
        `${more} is ongeveer ${f.number(factor, 3)} keer ${less}: ${cause}. Kijk bij beide eenheid en hoeveelheid na, verbeter de foute, of kies de bron die telt.`,
      tooFar:
        'Ze liggen verder uiteen dan één ingrediënt gewoonlijk schommelt. Kijk of beide hetzelfde ras, deel en dezelfde bereiding bedoelen, of kies de bron die telt.',
      twoFoods:
        'Houd ze als twee ingrediënten, of reken de cijfers van het vochtige om naar het vocht van het droge.',
      agreeDry: (fresh, dry, wayOut) =>
        `In droge stof komen ze overeen: ${fresh} lijkt het vochtige (vers of gekookt), ${dry} het droge. ${wayOut}`,
      allTimes: (dry, factor, fresh, wayOut) =>
        `Alles van ${dry} is ongeveer ${factor} keer ${fresh}: het eerste lijkt het droge, het tweede het vochtige (vers of gekookt), of één is voor een andere hoeveelheid. Geef beide vochtgehaltes op om zeker te zijn. ${wayOut}`,
      crudeAbove: (crude, dietary, other, one) =>
        `Vezel: ${crude} als ruwe celstof, ${dietary} als voedingsvezel. Ruwe celstof is een deel van voedingsvezel en kan niet meer zijn. Misschien noemt ${other} ruwe celstof voedingsvezel, of ${one} voedingsvezel ruwe celstof: verbeter één van de namen.`,
      belowLeast: (what, figure, other, least) =>
        `${what}: ${figure}, maar ${other} garandeert minstens ${least}. Kijk of beide hetzelfde product zijn; volg anders ${other}, of laat die garantie weg.`,
      aboveMost: (what, figure, other, most) =>
        `${what}: ${figure}, maar ${other} garandeert hoogstens ${most}. Kijk of beide hetzelfde product zijn; volg anders ${other}, of laat die garantie weg.`,
      crossed: (what, one, least, other, most) =>
        `${what}: ${one} garandeert minstens ${least}, ${other} hoogstens ${most}. Allebei kan niet: het zijn twee producten, of één is verkeerd gelezen.`,
    },
  };
};
