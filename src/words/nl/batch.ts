import type { Batch } from '../en/batch.ts';
import type { Figures } from '../figures.ts';

export const batch = (f: Figures): Batch => {
  const months = (n: number) => f.count(n, { one: 'maand', other: 'maanden' });
  return {
    title: (name) => `Batch: ${name}`,
    working: 'Het verslag wordt uitgerekend…',
    record: {
      region: 'Oordeel',
      givenUp: 'Opgegeven: niet voeren',
      finished: (grams, when) => `${f.grams(grams)}, klaar op ${when}.`,
      finishedBy: (grams, when, by) => `${f.grams(grams)}, klaar op ${when}, gemaakt door ${by}.`,
      closed: (grams, when) => `${f.grams(grams)}, gesloten op ${when}.`,
      closedBy: (grams, when, by) => `${f.grams(grams)}, gesloten op ${when}, gemaakt door ${by}.`,
      givenUpHelp:
        'Hij telt niet als voer en gaat naar geen enkel dier. Wat erin ging is uit de pakken af, en wordt gevonden als je een pak volgt.',
      givenUpWhy: (note) => `Opgegeven; niet voeren: ${note}`,
      acceptedWhy: (note) => `Buiten bereik aangenomen: ${note}`,
      forbidden: (percent) =>
        `${f.percent(percent)} van de batch staat op de lijst van wat nooit gevoerd wordt: niet voeren.`,
      why: 'Waar dit op rust',
      cautions: 'Waarschuwingen',
      caution: (foods, title, reason, way) => `<b>${foods}</b>: ${title}. ${reason} ${way}`,
    },
    foods: {
      title: 'Wat erin zit',
      food: 'Ingrediënt',
      planned: 'gepland %',
      from: (grams) => `uit <pack></pack>, ${f.grams(grams)}`,
    },
    contents: {
      title: 'Wat hij bevat',
      help: 'Per 100 g zoals gewogen. ± zegt hoeveel het van pak tot pak kan verschillen (95 van de 100 liggen ertussen), waar dat bekend is. “Minstens” staat er waar een ingrediënt niets zegt.',
      notKnown: 'niet bekend',
      amount: (value, unit) => `${value} ${unit}`,
      atLeast: (amount) => `minstens ${amount}`,
      spread: (amount, spread) => `${amount} ± ${spread}`,
    },
    keeping: {
      title: 'Bewaren en voeren',
      useBy: 'Gebruiken tot <b></b>',
      dry: 'Droog genoeg om te bewaren',
      unsure: 'Misschien te vochtig om te bewaren',
      damp: 'Te vochtig om te bewaren',
      sources: 'Waar dit vandaan komt',
      useByTerm: 'Gebruiken tot',
      moistureTerm: 'Vocht',
    },
    moisture: {
      damp: (water, most) =>
        `Het mengsel bevat ongeveer ${f.number(water, 1)} % water, meer dan de ${f.number(most)} % waarbij het goed blijft: droog de vochtigste ingrediënten verder, neem er minder van of bewaar het in de vriezer.`,
      dampAtLeast: (water, most) =>
        `Het mengsel bevat minstens ${f.number(water, 1)} % water, meer dan de ${f.number(most)} % waarbij het goed blijft: droog de vochtigste ingrediënten verder, neem er minder van of bewaar het in de vriezer.`,
      unknown: (percent) =>
        `Het vocht is maar van ${f.number(percent)} % van het mengsel bekend, dus niemand kan zeggen of het goed blijft.`,
      unsure: (water, most) =>
        `Het mengsel bevat ongeveer ${f.number(water, 1)} % water; het kan meer zijn dan de ${f.number(most)} % waarbij het goed blijft. Bewaar het in glas en let op vocht.`,
      dry: (water, most) =>
        `Het mengsel bevat ongeveer ${f.number(water, 1)} % water en blijft goed (hoogstens ${f.number(most)} %).`,
    },
    keep: {
      jar: 'Bewaar het in een gesloten pot of blik, koel, donker en droog.',
      look: 'Neem glas of kijk er vaak in: vocht aan de binnenkant betekent nu nadrogen; schimmel betekent alles weggooien.',
      small: 'Verpak kleine hoeveelheden: elke keer openen laat vochtige lucht binnen.',
      rancid:
        'Vette zaden en noten worden ranzig door warmte, licht en lucht: wat niet binnen een maand op is, ligt beter in de vriezer.',
      smell: 'Ruik eraan voordat je voert; ruikt het naar oude olie of verf, gooi het dan weg.',
      thaw: 'Laat een bevroren pot op kamertemperatuur komen voordat je hem opent, anders slaat er water op het voer neer.',
    },
    kinds: {
      nut: 'gepelde noten',
      'nut in shell': 'noten in de dop',
      'oil seed': 'hele oliezaden',
      'crushed oil seed': 'fijngemaakte oliezaden en noten',
      grain: 'hele granen',
      'crushed grain': 'vlokken, grof meel en meel van hele granen',
      legume: 'gedroogde erwten, bonen en linzen',
      vegetable: 'gedroogde groente',
      fruit: 'gedroogd fruit',
      herb: 'gedroogde kruiden en bloemen',
      animal: 'gedroogde insecten en ander dierlijk voer',
      other: 'ander droog voer',
    },
    useBy: {
      pack: (food, pack) => `${food} (pak “${pack}”)`,
      bestBefore: (pack, day) => `Ten minste houdbaar tot ${day}: ${pack}.`,
      printed: 'op het pak gedrukt',
      bought: (pack, day, n, kind) => `${pack}, gekocht op ${day}: ongeveer ${months(n)} houdbaar (${kind}).`,
      mixed: (food, n, kind) => `${food}: na het mengen ongeveer ${months(n)} houdbaar (${kind}).`,
      damp: (food, water, most, days) =>
        `${food}: ${f.number(water, 1)} % water, meer dan de ${f.number(most)} % om te bewaren; ongeveer ${f.count(days, { one: 'dag', other: 'dagen' })}.`,
      beforeMade: (day, food) =>
        `Dat is vóór de dag waarop hij gemaakt is (${day}): ruik eraan en bekijk het voordat je iets voert (${food}).`,
      noWater: (foods) => `Het vocht is niet bekend en telt niet mee: ${foods.join(', ')}.`,
      noFat: (foods) => `Het vetgehalte is niet bekend: ${foods.join(', ')}.`,
    },
    label: {
      printJar: 'Etiket voor de pot afdrukken',
      print: 'Groot etiket afdrukken',
      homeMix: (grams, batch) => `Eigen mengsel, ${f.grams(grams)}. Batch ${batch}`,
      madeOn: 'Gemaakt op',
      by: (name) => `door ${name}`,
      useBy: 'Gebruiken tot',
      feed: 'Voeren',
      keep: 'Bewaren',
      mind: 'Let op',
      in100g: 'In 100 g',
      foods: 'Ingrediënten, naar gewicht',
      share: (food, percent) => `${food} ${f.fixed(percent, 1)}\u00a0%`,
      caution: (foods, title, reason, way) => `${f.list(foods)}: ${title}. ${reason} ${way}`,
      why: (title, reason, way) => `${title}. ${reason} ${way}`,
      most: (percent) => `Hoogstens ${f.number(percent)} % van het mengsel.`,
      mostTogether: (percent) => `Samen hoogstens ${f.number(percent)} % van het mengsel.`,
      notComplete: 'Geen diergeneeskundig advies. Een eigen mengsel vervangt nooit een compleet voer.',
      notCompleteAlone: 'Geen compleet voer.',
      notCompleteBeside: (foods) => `Geen compleet voer: alleen naast ${f.list(foods)} voeren.`,
      andMore: (n) => `${f.count(n, { one: 'ander dier', other: 'andere dieren' })}: zie het verslag.`,
    },
    ownMoisture: 'door jou zo opgegeven',
    dampTable: { cereal: 'graan', soybean: 'sojaboon; bij gebrek aan een eigen tabel' },
  };
};
