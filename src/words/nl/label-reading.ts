import type { LabelReading } from '../en/label-reading.ts';
import type { Figures } from '../figures.ts';

export const labelReading = (f: Figures): LabelReading => {
  const short = (n: number) => f.number(Number(n.toPrecision(3)), 12);
  const columns = (n: number) => f.count(n, { one: 'kolom', other: 'kolommen' });
  return {
    short,
    told: (amount, unit, what) => `${short(amount)} ${unit} ${what}`,
    line: {
      amountsAre: (quantities) => `waarden gelden ${quantities}`,
      left: {
        daily: 'aandelen van de dagelijkse behoefte weggelaten',
        energy: 'aandelen van de energie weggelaten',
        prepared: 'cijfers van het bereide product weggelaten',
      },
      notRead: (part, why) => `niet gelezen: “${part}”: ${why}`,
      blank: 'leeg',
      together: 'samen met de regels ernaast gelezen',
      noFigure: 'een voedingsstof zonder cijfer; zet beide op één regel',
      counts: 'geen waarde: een aantal porties of een aandeel van de dagelijkse behoefte',
      nothing: 'geen cijfer erin',
      range: (low, high) => `${f.number(low, 6)} tot ${f.number(high, 6)}`,
      least: (low) => `minstens ${f.number(low, 6)}`,
      most: (high) => `hoogstens ${f.number(high, 6)}`,
      aFigure: 'een cijfer',
      per: (amount, grams) => `${amount} per ${f.number(grams)} g`,
      inDry: (amount) => `${amount} in droge stof`,
      open: (amount) => `${amount} (een vraag staat open)`,
      noted: (amount, note) => `${amount} (${note})`,
      dailyShare: 'aandeel van de dagelijkse behoefte',
      energyShare: 'aandeel van de energie',
      salt: 'zout',
      available: 'beschikbare koolhydraten',
    },
    why: {
      noName: 'een cijfer zonder voedingsstof ervoor; zet naam en cijfer op één regel',
      traces: '“sporen” is geen cijfer; laat het weg, of schrijf het meeste dat het kan zijn, zoals “<0,1 g”',
      shared: (first, second, end) => `“${first}” en “${second}” ${end}`,
      sharedEnd: 'delen één cijfer; geef elk een eigen',
      advice: 'gebruiksadvies of gewicht van het pak, geen analyse',
      cut: 'na het cijfer volgt een naam zonder eigen cijfer; zet er een komma tussen, of elk op een eigen regel',
      notKnown: (said) => `“${said}” is hier niet bekend; schrijf alleen de voedingsstof en het cijfer`,
      twoBases: 'één cijfer heeft twee grondslagen; geef er één',
      twoQuantities: 'één cijfer heeft twee hoeveelheden; geef er één',
      twoBoundsBeside: 'minimum en maximum staan beide naast één cijfer; gebruik er één',
      twoBoundsBefore: 'minimum en maximum staan beide voor één cijfer; gebruik er één',
      listShare: 'een aandeel in de ingrediëntenlijst, niet wat erin zit',
      noLineSays: (figures) =>
        `${f.number(figures)} cijfers, maar geen regel zegt waarvoor elk geldt; geef er voor elk een`,
      someColumns: (figures, n) =>
        `${f.number(figures)} cijfers, maar ${columns(n)} om te zeggen waarvoor elk geldt; geef er voor elk een`,
      figuresForColumns: (figures, n) =>
        `${f.number(figures)} cijfers voor ${columns(n)}; geef er voor elk een`,
      minus: 'een min voor een cijfer; een waarde is 0 of meer',
      plusMinus: 'een plus of min voor een cijfer; een waarde is 0 of meer',
      halfRange: 'een bereik met één eind; schrijf beide',
      twoUnits: 'een bereik met twee eenheden; gebruik er één',
      falling: 'een dalend bereik; schrijf het kleinste cijfer eerst',
      noUnit: (figure) =>
        `${figure} heeft geen eenheid die hier bekend is; schrijf die achter het cijfer, zoals “g” of “%”`,
      betweenUnits: (figure) =>
        `${figure} staat tussen twee eenheden; schrijf elk cijfer met zijn eenheid erachter`,
      oneOrTwo: (figure) => `${figure} kan één cijfer zijn of twee; schrijf het zonder spatie`,
      rangeAndBound: 'een bereik en tegelijk een minimum of maximum; gebruik er één',
      shareOfDaily: 'een aandeel van de dagelijkse behoefte staat in %; een waarde staat zonder dat woord',
      shareOfEnergy: 'een aandeel van de energie staat in %; een waarde staat zonder dat woord',
      boundBeforeName: 'minimum of maximum staat voor een naam, niet voor het cijfer',
      unitTooMany: (unit) => `“${unit}” is één eenheid te veel; schrijf elk cijfer met zijn eenheid erachter`,
      plusOrMinus: '± is hier niet bekend; schrijf het bereik, zoals “16-18 %”',
      noFigureFor: (what) => `“${what}” heeft geen cijfer`,
      nameOrFigure: (text) =>
        `${text} kan bij de naam horen of het cijfer beginnen; schrijf het aan elkaar (“D3”)`,
      runsTogether: (text) => `in ${text} lopen letters en cijfers door elkaar; haal ze uit elkaar`,
      tooLong: (text) => `${text}... is te lang voor een waarde`,
      noNumber: (text) => `${text} is geen leesbaar getal; schrijf het met een decimaalteken`,
      oneMark: (text) => `${text} is geen leesbaar getal; schrijf het met één decimaalteken`,
      mixed: (text) => `${text} mengt letters en cijfers, zoals bij scannen; typ het cijfer`,
      headless: (text) =>
        `${text} begint met een decimaalteken; schrijf de nul ervoor, of een spatie erachter`,
      raised: 'een verhoogd cijfer; schrijf het gewoon',
      otherScript: (text) => `${text} is een cijfer uit een ander schrift; schrijf het gewoon`,
      daily: 'een aandeel van de dagelijkse behoefte is geen waarde',
      traceInPercent: (what) =>
        `${what} in % is een aandeel van de dagelijkse behoefte, geen waarde; schrijf het in mg, µg of IE`,
      noWeight: (what, per) => `${what} staat ${per}, en dat is geen gewicht; schrijf het per 100 g`,
      notSold: (what, how) => `${what} staat voor “${how}”, niet voor het product zoals verkocht`,
      basisUnsaid: (what) => `of ${what} voor het product zoals verkocht geldt, staat er niet`,
      tooMuch: (what, amount, unit) =>
        `${what}: ${f.number(amount, 6)} ${unit} is meer dan een ingrediënt kan bevatten`,
      tooMuchPer: (what, amount, unit, grams) =>
        `${what}: ${f.number(amount, 6)} ${unit} per ${f.number(grams)} g is meer dan een ingrediënt kan bevatten`,
      vitaminForm: (what) => `${what} in IE hangt van de vorm van de vitamine af; schrijf het in mg`,
      wrongUnit: (what, unit) => `${what} wordt niet in ${unit} gemeten; kijk de eenheid na`,
    },
    asPrepared: 'bereid',
    energyShares: '... aandelen van de energie',
    notes: {
      about: 'als ongeveer gedrukt',
      onlyReading: (printed, value) =>
        `${printed} gelezen als ${f.number(value, 6)}, anders kan het bij geen ingrediënt`,
      byMark: (printed, value, mark) =>
        `${printed} gelezen als ${f.number(value, 6)}, omdat het etiket decimalen met “${mark}” schrijft`,
      fromSalt: 'natrium berekend uit het zout, dat 2,5 keer het natrium is',
      fromDry: (moisture) =>
        `waarden in droge stof omgerekend naar het product met ${f.number(moisture)} % vocht`,
      withFibre: 'koolhydraten berekend uit de gedrukte beschikbare en de voedingsvezel samen',
      leastOnly: 'koolhydraten zijn alleen als “minstens” bekend: het etiket laat de vezel weg',
    },
    ask: {
      which: (heard, names) => `“${heard}” kan ${f.either(names)} betekenen; wat is het?`,
      serving: (grams) => `een portie van ${f.number(grams)} g`,
      perWhat: 'Geen regel zegt waarvoor deze waarden gelden; voor hoeveel gram?',
      servingGrams: (text) => `Hoeveel gram is één portie (“${text}”)?`,
      volume: (text) => `Hoeveel gram weegt “${text}”?`,
      other: (text) => `De waarden gelden “${text}”; hoeveel gram is dat?`,
      number: (printed, unit, what, answers) => `${what}: is ${printed} ${unit} hier ${f.either(answers)}?`,
      percent: (what) =>
        `${what}: is dat een aandeel van het gewicht, of van de dagelijkse behoefte of de energie?`,
      ofWeight: 'Aandeel van het gewicht',
      ofDaily: 'Aandeel van de dagelijkse behoefte of de energie (dan is het geen waarde)',
      list: 'Is deze regel een analyse, of een lijst van wat erin zit?',
      content: 'Een analyse: wat erin zit',
      ingredient: 'Ingrediënten en hun aandelen (dan zijn het geen waarden)',
      basis: (said) => `Het etiket zegt “${said}”; waarvan zijn deze waarden?`,
      sold: 'Van het product zoals verkocht',
      dry: 'Van de droge stof ervan',
      none: 'Van iets anders, zoals gekookt of aangemaakt; weglaten',
      column: (what, n) =>
        `De regel noemt ${what} één keer, voor ${f.number(n)} kolommen; welke kolom is het?`,
      differ: (what, said) =>
        `${what} staat er als ${said.join(' en als ')}, meer verschil dan afronding; wat klopt?`,
      neither: 'Geen van beide; weglaten',
      carbohydrate:
        'Zit de vezel in de koolhydraten van dit etiket (zoals in de VS) of niet (zoals in Europa)?',
      holds: 'De vezel zit erin',
      leavesOut: 'De vezel zit er niet in; ze telt ernaast, of als “minstens” als er geen gedrukt is',
      moisture:
        'De waarden zijn van de droge stof en het vocht is niet gedrukt; hoeveel procent van het product is water?',
      notOne: (message, answer, wanted) => `${message} “${answer}” past niet; gevraagd is ${wanted}.`,
      oneOf: (answers) => answers.join(', '),
      aboveNought: 'een getal boven 0',
      belowHundred: 'een getal van 0 tot onder 100',
    },
    faults: {
      needsMoisture:
        'Waarden in droge stof hebben het vocht nodig, precies en niet als grens; geef het op, of kies “zoals gevoerd”.',
      moisture: (water) => `Het vocht is ${f.number(water)} %; het moet onder 100 % zijn.`,
      checkFed: (grams) =>
        `Kijk de getypte waarde na, de hoeveelheid (${f.number(grams)} g) en of ze zoals gevoerd is.`,
      checkDry: (grams) =>
        `Kijk de getypte waarde na, de hoeveelheid (${f.number(grams)} g) en of ze in droge stof is.`,
      tooHeavy: (what, amount, unit, wayOut) =>
        `${what} komt op ${amount} ${unit} in 100 g, meer dan het gewicht zelf. ${wayOut}`,
      crossed: (what, said, wayOut) => `${what}: ${said}; allebei kan niet. ${wayOut}`,
      part: (what, amount) => `${what} ${amount}`,
      carbohydrate: (amount) => `koolhydraten met vezel ${amount}`,
      sum: (sum, parts, wayOut) => `De delen komen op ${sum} g in 100 g: ${parts.join(', ')}. ${wayOut}`,
      fibre: (crude, dietary) =>
        `De ruwe celstof (${crude}) ligt boven de voedingsvezel (${dietary}), waarvan ze een deel is; kijk na welke van de twee het etiket noemt.`,
    },
    checks: {
      bounds: (what, low, high) =>
        `${what} is minstens ${short(low)} en hoogstens ${short(high)}, en dat kan niet allebei; kijk minimum en maximum na.`,
      belowLeast: (what, value, low) =>
        `${what} is ${short(value)}, onder het eigen minimum van ${short(low)}.`,
      aboveMost: (what, value, high) =>
        `${what} is ${short(value)}, boven het eigen maximum van ${short(high)}.`,
      sum: (sum, parts) =>
        `100 g kan geen ${short(sum)} g bevatten: ${parts.join(' + ')}. Eén waarde geldt misschien voor een ander gewicht.`,
      part: (part, whole) => `${part} is meer dan ${whole}, waarvan het een deel is.`,
      fibre: (crude, dietary) =>
        `Ruwe celstof ${short(crude)} g ligt boven voedingsvezel ${short(dietary)} g, maar is altijd de kleinste; misschien zijn ze verwisseld.`,
      energy: (energy, general, modified) =>
        `De energie is ${short(energy)} kcal per 100 g, maar eiwit, vet en koolhydraten geven ongeveer ${short(general)} (4/9/4) of ${short(modified)} (3,5/8,5/3,5, zonder vezel). Staat de energie in kJ, of voor een ander gewicht?`,
      damp: (most, water) =>
        `Gedroogd blijft goed onder ongeveer ${f.number(most)} % vocht, en dit heeft ${short(water)} %; de cijfers zijn misschien van het verse product.`,
      thin: (solids) =>
        `Eiwit, vet en koolhydraten zijn maar ${short(solids)} g van 100 g, dus meer dan een derde zou water zijn; gedroogd heeft minder. De cijfers zijn misschien van het verse product.`,
      nearlyFresh: (food, water, own, its) =>
        `Dit zijn bijna de cijfers van ${food} met ${short(water)} % water (${own} tegen ${short(its)}); gedroogd zou elk meermaals hoger zijn.`,
      beside: (own, its, food) => `${own} naast ${short(its)} in ${food}`,
      besideDry: (own, its, food) => `${own} naast ${short(its)} in ${food}, bij gelijk vocht,`,
      tenHigh: (beside) => `${beside} lijkt tien keer te hoog; zoek een verschoven komma.`,
      tenLow: (beside) => `${beside} lijkt tien keer te laag; zoek een verschoven komma.`,
      thousandHigh: (beside) => `${beside} lijkt duizend keer te hoog; kijk of g, mg en µg verwisseld zijn.`,
      thousandLow: (beside) => `${beside} lijkt duizend keer te laag; kijk of g, mg en µg verwisseld zijn.`,
      per250: (food) =>
        `Alle hoofdcijfers zijn ongeveer tweeënhalf keer die van ${food}; ze gelden misschien voor 250 g in plaats van 100 g.`,
      per40: (food) =>
        `Alle hoofdcijfers zijn ongeveer twee vijfde van die van ${food}; ze gelden misschien voor 40 g in plaats van 100 g.`,
    },
    impossible: {
      correctOne: (said) => `${said}; verbeter een van beide of laat het weg`,
      weighs: (told, grams, unit) =>
        `${told} weegt ${short(grams)} g, meer dan de 100 g waarin het zit; kijk de eenheid na, die is ${unit} per 100 g`,
      energy: (kcal) =>
        `${short(kcal)} kcal in 100 g is meer dan puur vet heeft (902); is het in kJ? Deel dan door 4,184`,
      together: (sum, parts) =>
        `100 g kan geen ${short(sum)} g bevatten: ${parts.join(' + ')}; waarden gelden per 100 g zoals gevoerd, dus één geldt misschien voor een ander gewicht`,
      grams: (grams, what) => `${short(grams)} g ${what}`,
      minerals: 'mineralen',
    },
  };
};
