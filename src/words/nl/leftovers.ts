import type { Leftovers } from '../en/leftovers.ts';
import type { Figures } from '../figures.ts';

export const leftovers = (f: Figures): Leftovers => {
  const range = (low: number, high: number) =>
    f.grams(low, 1) === f.grams(high, 1) ? f.grams(low, 1) : `${f.grams(low, 1)} tot ${f.grams(high, 1)}`;
  return {
    title: 'Resten',
    unknownMix: 'Mengsel, onbekend welk',
    range,

    ask: {
      title: (name) => `Wat heeft ${name} laten liggen?`,
      night: 'Van het voer van',
      lastNight: (day) => `gisteren (${f.shortDay(day)})`,
      tonight: (day) => `vandaag (${f.shortDay(day)})`,
      day: (day) => f.shortDay(day),
      noted: (day) => `${day}, genoteerd`,
      nothing: 'Niets over',
      weight: 'Alles wat over was',
      pad: 'Cijfers',
      wipe: 'Laatste cijfer terugnemen',
      dot: 'Komma',
      keep: 'Bewaren',
      mostly: 'Dit lag er grotendeels nog',
      mostlyHint: 'Op het oog: de helft of meer ervan ligt er nog. Met of zonder gewicht hierboven.',
      byFood: 'Per ingrediënt wegen',
      together: 'Alles samen wegen',
      sorted: 'Gram over van elk ingrediënt',
      sortedHint: 'Een leeg veld betekent: daar is niets van over.',
      someHint: 'Een leeg veld betekent: het ligt in de rest.',
      rest: 'De hele rest samen',
      some: 'Ik heb maar enkele ingrediënten uitgezocht',
      since: 'Voer van hoeveel nachten lag er',
      oneNight: 'één nacht',
      sinceDay: (day, nights) =>
        `${f.count(nights, { one: 'nacht', other: 'nachten' })}, sinds ${f.shortDay(day)}`,
      more: 'Meer: meerdere nachten, of alleen een voorraadje',
      missing: 'Zeg eerst hoeveel je hebt aangeboden.',
      none: 'Typ wat er over was, of kies een ingrediënt dat er grotendeels nog lag.',
      notNumber: (text) => `“${text}” is geen gewicht.`,
    },
    offered: {
      line: (foods, grams) => `Aangeboden: ${f.list(foods)}, samen ${f.grams(grams, 1)}.`,
      mix: (grams, name) => `${f.grams(grams, 1)} ${name}`,
      food: (grams, name) => `${f.grams(grams, 1)} ${name}`,
      usual: 'Niemand heeft dit afgevinkt, dus telt de gewone maaltijd.',
      nobody: 'Niemand heeft gezegd wat er is aangeboden.',
      change: 'Wijzigen',
      done: 'Klaar',
      mixUnknown: 'Mengsel',
      planned: 'Welke batch het was is niet bekend: het mengsel telt zoals het gepland is.',
      unknown: 'Welk mengsel het was is niet bekend, dus telt het als één ingrediënt.',
      theMix: 'mengsel',
    },
    kept: {
      nothing: 'Bewaard: niets over.',
      grams: (grams) => `Bewaard: ${f.grams(grams, 1)} over.`,
      some: 'Bewaard.',
      gone: 'Verwijderd.',
      undo: 'Ongedaan maken',
      undone: 'Teruggenomen.',
    },
    hoard: {
      title: 'Heb je naar een voorraadje gezocht?',
      hint: 'Wat in een voorraadje ligt, is niet gegeten. Sla dit over als je niet gekeken hebt.',
      none: 'Niets gevonden',
      found: 'Iets gevonden',
      taken: 'Eruit gehaald en gewogen',
      keepSome:
        'Als je een voorraadje weghaalt, laat dan wat droog voer liggen: alles kwijtraken maakt het dier onrustig.',
      correct: 'Voorraadje verbeteren',
    },
    result: {
      title: 'Wat er gegeten is',
      period: 'Bekijk',
      night: 'de laatste genoteerde nacht',
      weeks: 'de laatste 2 weken',
      months: 'de laatste 3 maanden',
      none: 'In deze dagen zijn geen resten genoteerd.',
      nights: (noted, fed) =>
        `${f.count(noted, { one: 'nacht', other: 'nachten' })} genoteerd, van ${f.count(fed, { one: 'dag', other: 'dagen' })} met voer.`,
      taken: (offered, low, high) =>
        `Van ${f.grams(offered, 1)} die is aangeboden, is ${range(low, high)} weg.`,
      eatenExactly: (low, high) => `Gegeten, met de voorraadjes geteld: ${range(low, high)}.`,
      eatenInPart: (low, high) =>
        `Gegeten: ${range(low, high)}. Niet alle voorraadjes van deze nachten zijn geteld, of de vondst kan ook van andere nachten zijn.`,
      eatenUnknown: (high) =>
        `Gegeten: hooguit ${f.grams(high, 1)}. Niemand heeft naar voorraadjes gezocht, dus een deel kan verstopt liggen.`,
      older:
        'Eerder had niemand naar voorraadjes gezocht. Is een deel van de vondst ouder, dan is er meer gegeten dan hier staat.',
      unticked: (days) =>
        f.form(days, {
          one: 'Voor één van de dagen heeft niemand gezegd wat er is aangeboden; die telt als niets.',
          other: `Voor ${f.number(days)} van de dagen heeft niemand gezegd wat er is aangeboden; die tellen als niets.`,
        }),
      doubt: {
        more: 'Er was meer over dan er is aangeboden: het is nat, of van andere nachten, of een gewicht klopt niet. Het gewicht van die nacht zegt niets over wat er gegeten is.',
        older:
          'In het voorraadje ligt meer dan er sinds de vorige keer weg is, dus een deel is ouder. Het zegt niets over hoeveel er gegeten is.',
        scale:
          'Er was iets meer over dan er is aangeboden, zoals keukenweegschalen dat hebben. Het telt als alles.',
        mostly:
          'Er zouden meer ingrediënten grotendeels over zijn dan het gewicht toelaat. Het gewicht telt.',
        sum: 'De ingrediënten en het hele gewicht kloppen niet met elkaar. De ingrediënten tellen.',
        'not-offered': (foods) => `Er lag ook: ${f.list(foods)}. Dat was niet aangeboden en telt niet mee.`,
        dried: (percent) =>
          `Vers voer droogt terwijl het ligt: wat ervan over is, telt als tot ${f.percent(percent)} lichter dan het was (gangbare praktijk, geen bron). Droog voer kan wat vocht opnemen; dat is niet meegerekend.`,
      },
    },
    picture: {
      title: 'Per ingrediënt',
      hint: 'Elke balk is wat er is aangeboden. Vol: zeker weg. Gestreept: misschien weg, misschien over, want het is niet uitgezocht. Leeg: over. Het streepje: hoeveel er van alles samen weg is.',
      hintEaten:
        'Elke balk is wat er is aangeboden. Vol: zeker gegeten. Gestreept: misschien gegeten. Leeg: niet gegeten. Het streepje: hoeveel er van alles samen weg is.',
      food: 'Ingrediënt',
      takenHead: 'Weg',
      eatenHead: 'Gegeten',
      index: 'Eruit gepikt?',
      of: (low, high, offered) => `${range(low, high)} van ${f.grams(offered, 1)}`,
      percent: (low, high) =>
        f.percent(low, 0) === f.percent(high, 0)
          ? f.percent(low, 0)
          : `${f.number(low, 0)} tot ${f.percent(high, 0)}`,
      more: (n) => `Nog ${f.count(n, { one: 'ingrediënt', other: 'ingrediënten' })} tonen`,
    },
    index: {
      title: 'Wat eruit gepikt wordt',
      help: '100: gegeten zoals het is aangeboden. Boven 100: vóór ander voer eruit gepikt. Onder 100: blijven liggen. Het is 100 maal wat er van een ingrediënt weg is, gedeeld door zijn deel van het geheel (Leonardi en Armentano 2003, J. Dairy Sci.).',
      spanHelp:
        'De getallen tussen haakjes: waartussen het getal voor zulke nachten ligt, 95 van de 100 keer. Ze volgen uit hoe de nachten verschillen (verhoudingsschatting, Student-t) en uit wat niet is uitgezocht.',
      byTaken: 'Het gaat om wat uit de bak weg is, want niet alle voorraadjes zijn geteld.',
      byEaten: 'Het gaat om wat gegeten is: voorraadjes zijn meegeteld.',
      value: (value) => f.number(value, 0),
      limits: (low, high) => `${f.number(low, 0)} tot ${f.number(high, 0)}`,
      leaning: {
        picked: 'eruit gepikt',
        left: 'blijft liggen',
        even: 'zoals aangeboden',
        unclear: 'nog niet te zeggen',
      },
      nights: (n) => f.count(n, { one: 'nacht', other: 'nachten' }),
    },
    nutrients: {
      title: 'Wat dat voor het voer betekent',
      hintTaken:
        'In 100 g zoals aangeboden, en in 100 g die uit de bak weg is. Een bereik waar niet alles is uitgezocht of niet alles bekend is.',
      hintEaten:
        'In 100 g zoals aangeboden, en in 100 g zoals gegeten. Een bereik waar niet alles is uitgezocht of niet alles bekend is.',
      offered: 'aangeboden',
      taken: 'weg',
      eaten: 'gegeten',
      amount: (low, high, unit) =>
        f.figure(low) === f.figure(high)
          ? `${f.figure(low)} ${unit}`
          : `${f.figure(low)} tot ${f.figure(high)} ${unit}`,
      coverage: (percent) => `bekend voor ${f.percent(percent, 0)} van het gewicht`,
      more: 'Meer voedingsstoffen',
      fewer: 'Minder voedingsstoffen',
      none: 'Van deze ingrediënten is niets bekend.',
    },
    advice: {
      title: 'Wat helpt',
      vetToday: (taken, usual) =>
        `Hooguit ${f.grams(taken, 1)} is weg, gewoon is ${f.grams(usual, 1)}. Een klein dier dat een dag lang nauwelijks eet, is in gevaar: kijk nu hoe het gaat, weeg het en ga vandaag naar de dierenarts, meteen als het ziek lijkt.`,
      vetTodayNothing:
        'Er is niets weg. Een klein dier dat een dag lang niet eet, is in gevaar: kijk nu hoe het gaat, weeg het en ga vandaag naar de dierenarts, meteen als het ziek lijkt.',
      vetTomorrow: (taken, usual) =>
        `Hooguit ${f.grams(taken, 1)} is weg, gewoon is ${f.grams(usual, 1)}. Weeg het dier en bied aan wat het lust. Is er de volgende nacht weer zo weinig weg, of lijkt het eerder ziek, ga dan dezelfde dag naar de dierenarts.`,
      vetHoard:
        'Het kan van zijn voorraadje leven. Dat is geen reden om te wachten als het er ziek uitziet, afvalt of minder uit zijn nest komt.',
      vetRule:
        'De regel: minder dan de helft van het gewone (het midden van de laatste nachten) één nacht lang; minder dan een kwart: meteen. Gangbare praktijk, geen bron.',
      less: (foods) =>
        `Eruit gepikt wordt: ${f.list(foods)}. Bied daar per keer iets minder van aan, dan wordt de rest ook gegeten. Verminder het over een week of twee, niet in één keer.`,
      change: (foods) =>
        `Vaak blijft liggen: ${f.list(foods)}. Probeer het in een andere vorm (heel, geplet, in kleinere stukjes), of geef het een kleiner aandeel in het volgende mengsel en iets wat wel gegeten wordt in de plaats.`,
      mix: 'Naar het mengsel',
      scatter:
        'Strooi kleinere porties, als het kan twee keer per dag. Wat één voor één gevonden moet worden, wordt minder uitgezocht.',
      starve:
        'Houd nooit voer achter tot gegeten wordt wat blijft liggen: een klein dier lijdt al na uren honger, niet pas na dagen.',
      bowl: 'Een lege bak bewijst niet dat er gegeten is: hamsters en veel andere dieren dragen voer weg. Zoek af en toe het voorraadje, weeg het en noteer het hier.',
    },
    nights: {
      title: 'Genoteerde nachten',
      none: 'Nog geen.',
      nothing: 'niets over',
      left: (grams) => `${f.grams(grams, 1)} over`,
      leftOf: (grams, offered) => `${f.grams(grams, 1)} over van ${f.grams(offered, 1)}`,
      mostly: (foods) => `grotendeels over: ${f.list(foods)}`,
      hoard: (grams) => `voorraadje ${f.grams(grams, 1)}`,
      noHoard: 'geen voorraadje',
      hoardSeen: 'voorraadje gevonden',
      since: (day) => `voer sinds ${f.shortDay(day)}`,
      notWeighed: 'niet gewogen',
      onlyHoard: 'resten niet bekeken',
      correct: 'Verbeteren',
      correctOf: (day) => `${f.shortDay(day)} verbeteren`,
      remove: 'Verwijderen',
      removeOf: (day) => `Verwijderen wat van ${f.shortDay(day)} genoteerd is`,
    },
    gone: (name) => `${name} is hier niet meer. Wat genoteerd is, blijft.`,
  };
};
