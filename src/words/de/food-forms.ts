import type { FoodForms } from '../en/food-forms.ts';
import type { Figures } from '../figures.ts';

export const foodForms = (f: Figures): FoodForms => {
  const part = (share: number) => `${f.number(100 * share, 0)} %`;
  return {
    source: {
      dried: (source, moisture) => `${source}, getrocknet auf ${f.number(moisture)} % Feuchte, errechnet`,
      by: (source, table, code, title) => `${source}, mit ${table}, Code ${code} ${title}`,
    },
    no: {
      sprouted:
        'Kein veröffentlichter Faktor sagt, was das Keimen ändert; such stattdessen eine gemessene gekeimte Zutat in den Tabellen.',
      blanched: (kind) =>
        `Für blanchierte Zutaten dieser Art (${kind}) gibt es keine veröffentlichten Faktoren; such stattdessen eine gemessene Zutat in den Tabellen.`,
      roasted: (kind) =>
        `Für geröstete Zutaten dieser Art (${kind}) gibt es keine veröffentlichten Faktoren; such stattdessen eine gemessene Zutat in den Tabellen.`,
      kinds: {
        leaf: 'Blatt',
        root: 'Wurzel',
        potato: 'Kartoffel',
        herb: 'Kräuter',
        vegetable: 'Gemüse',
        legume: 'Hülsenfrüchte',
        nut: 'Nüsse',
        fruit: 'Obst',
        seed: 'Saaten',
        animal: 'tierisch',
        none: 'ohne Gruppe',
      },
      weights:
        'Beim Blanchieren geht Trockenmasse ins Wasser, die Feuchte allein genügt also nicht: Wiege vorher und nachher (abgetropft) und gib beides an.',
    },
    notes: {
      asGiven: 'wie angegeben',
      asChosen: 'wie gewählt',
      rounded: (percent) =>
        `${f.number(percent)} % bleiben, auf 5 % gerundet; die Streuung ist nicht veröffentlicht`,
      boiled: (percent) =>
        `${f.number(percent)} % bleiben nach dem Kochen, auf 5 % gerundet; die Streuung ist nicht veröffentlicht; kurz blanchiert bleibt mehr`,
      noFactor: 'nicht angegeben: kein veröffentlichter Faktor',
      conserved: 'Trockenmasse bleibt (kein veröffentlichter Faktor)',
      rawNone: 'roh ist nichts davon enthalten',
      freshNone: 'frisch ist nichts davon enthalten',
      boundsOnly:
        'nur Grenzen: kein veröffentlichter Faktor; mehr als die ganze verlorene Trockenmasse kann nicht fehlen',
      nothingKnown:
        'nicht angegeben: Keine getrocknete Zutat und keine Tabelle sagt, wie viel beim Trocknen bleibt',
      dryConserved: 'Trockenmasse bleibt',
      keptBy: (kept, source, code) => `${part(kept)} bleiben (${source}, Code ${code})`,
      keptMedian: (kept) =>
        `${part(kept)} bleiben, der Median der Zutaten, die USDA SR28 frisch und getrocknet führt (kein veröffentlichter Faktor)`,
      spread: (kept, sd, figures) =>
        `${kept}; die übliche Streuung ist ${part(sd)} des Werts, aus ${f.number(figures)} gemessenen Zahlen`,
      tooWide: (kept, figures) =>
        `${kept}, aber ${f.number(figures)} gemessene Zahlen liegen für eine Zahl zu weit auseinander: nur Grenzen`,
    },
    combined: {
      mean: (sources, names) =>
        `Mittel aus ${f.number(sources)} Quellen (zufällige Effekte, DerSimonian und Laird 1986): ${names}`,
      chosen: (names) => `${names}, von dir gewählt`,
      contradictory: (said) =>
        `${said}. Das garantierte Mindeste und Meiste widersprechen sich und bleiben weg`,
    },
    slips: {
      salt: 'vielleicht steht Salz als Natrium da (Salz ist das 2,5-Fache des Natriums)',
      quantity: 'die größere gilt vielleicht für 250 g, oder die kleinere für 40 g',
      energy: 'vielleicht stehen Kilojoule für Kilokalorien',
      ten: 'vielleicht ist ein Komma verrutscht, oder „je kg“ steht für „je 100 g“',
      hundred: 'vielleicht ist ein Komma um zwei Stellen verrutscht',
      thousand: 'vielleicht steht mg für g, oder µg für mg',
    },
    apart: {
      figure: (source, amount, unit) => `${source} ${amount} ${unit}`,
      said: (what, one, other, cause) => `${what}: ${one}, ${other}. ${cause}`,
      saidDry: (what, one, other, cause) =>
        `${what}: ${one}, ${other} (in der Trockenmasse verglichen). ${cause}`,
      crudeAsDietary: (less, more) =>
        `${less} sieht nach Rohfaser aus, die als Ballaststoffe dasteht; diese sind um etwa so viel mehr. Gib es als Rohfaser ein, oder folge ${more}.`,
      dietaryAsCrude: (more, less) =>
        `${more} sieht nach Ballaststoffen aus, die als Rohfaser dastehen: ${less} nennt fast dasselbe als Ballaststoffe. Gib es als Ballaststoffe ein, oder folge ${less}.`,
      slip: (more, factor, less, cause) =>
        `${more} ist etwa das ${f.number(factor, 3)}-Fache von ${less}: ${cause}. Prüfe bei beiden Einheit und Menge, berichtige die falsche, oder wähle die Quelle, die zählt.`,
      tooFar:
        'Sie liegen weiter auseinander, als eine Zutat gewöhnlich schwankt. Prüfe, ob beide dieselbe Sorte, denselben Teil und dieselbe Zubereitung meinen, oder wähle die Quelle, die zählt.',
      twoFoods:
        'Führe sie als zwei Zutaten, oder rechne die Zahlen der feuchten auf die Feuchte der trockenen um.',
      agreeDry: (fresh, dry, wayOut) =>
        `In der Trockenmasse stimmen sie überein: ${fresh} sieht nach feuchter Ware aus (frisch oder gekocht), ${dry} nach trockener. ${wayOut}`,
      allTimes: (dry, factor, fresh, wayOut) =>
        `Alles bei ${dry} ist etwa das ${factor}-Fache von ${fresh}: Das erste sieht nach trockener Ware aus, das zweite nach feuchter (frisch oder gekocht), oder eines gilt für eine andere Menge. Gib beide Feuchten an, um sicher zu sein. ${wayOut}`,
      crudeAbove: (crude, dietary, other, one) =>
        `Faser: ${crude} als Rohfaser, ${dietary} als Ballaststoffe. Rohfaser ist ein Teil der Ballaststoffe und kann nicht mehr sein. Vielleicht nennt ${other} Rohfaser als Ballaststoffe, oder ${one} Ballaststoffe als Rohfaser: Berichtige einen der Namen.`,
      belowLeast: (what, figure, other, least) =>
        `${what}: ${figure}, aber ${other} garantiert mindestens ${least}. Prüfe, ob beide dieselbe Ware sind; sonst folge ${other}, oder lass diese Garantie weg.`,
      aboveMost: (what, figure, other, most) =>
        `${what}: ${figure}, aber ${other} garantiert höchstens ${most}. Prüfe, ob beide dieselbe Ware sind; sonst folge ${other}, oder lass diese Garantie weg.`,
      crossed: (what, one, least, other, most) =>
        `${what}: ${one} garantiert mindestens ${least}, ${other} höchstens ${most}. Beides geht nicht: Es sind zwei Waren, oder eine ist falsch gelesen.`,
    },
  };
};
