/** Phrases of sources that Pouchful wrote itself, in Dutch; titles of publications stay as they are. */
export const PHRASES: readonly (readonly [english: string, said: string])[] = [
  ['common practice, no source', 'gangbare praktijk, geen bron'],
  ['from memory, confirm before relying on it', 'uit het hoofd, voor gebruik nakijken'],
  ['from memory', 'uit het hoofd'],
  ['read at second hand', 'uit de tweede hand gelezen'],
  ['own choice', 'eigen keuze'],
  ['typed in', 'ingetypt'],
  ['read in a Dutch rendering', 'gelezen in een Nederlandse versie'],
  [
    'per kg diet at 10 % moisture, divided by 0.9 to dry matter',
    'per kg voer met 10 % vocht, gedeeld door 0,9 naar droge stof',
  ],
  [
    '3.8 to 4.1 kcal ME per g at 10 % moisture, divided by 0.9 to dry matter',
    '3,8 tot 4,1 kcal per g met 10 % vocht, gedeeld door 0,9 naar droge stof',
  ],
  [
    'in a diet richer or poorer in energy the other figures would be others',
    'bij voer met meer of minder energie zouden de andere cijfers anders zijn',
  ],
  [
    'stated as folic acid, compared with total folate',
    'opgegeven als foliumzuur, vergeleken met folaat totaal',
  ],
  [
    'stated as vitamin E, compared with alpha-tocopherol',
    'opgegeven als vitamine E, vergeleken met alfatocoferol',
  ],
  [
    'phylloquinone; the 4 mg found enough for growth there were menadione, which is another substance and is not counted here',
    'fyllochinon; de 4 mg die daar genoeg was voor de groei was menadion, een andere stof die hier niet telt',
  ],
  ['for growth', 'voor de groei'],
  ['stated as lipid', 'opgegeven als lipide'],
  [
    'cystine may stand for a half of it or more, which is not credited here: stricter',
    'cystine kan de helft ervan of meer vervangen, wat hier niet meetelt: strenger',
  ],
  [
    'tyrosine may stand for half of it, which is not credited here: stricter',
    'tyrosine kan de helft ervan vervangen, wat hier niet meetelt: strenger',
  ],
  [
    'stated as retinol, compared with retinol activity',
    'opgegeven als retinol, vergeleken met retinolactiviteit',
  ],
  ['stated as RRR-alpha-tocopherol', 'opgegeven als RRR-alfatocoferol'],
  [
    'stated as phylloquinone, by the need of the rat',
    'opgegeven als fyllochinon, naar de behoefte van de rat',
  ],
  [
    'stated as choline bitartrate, compared with choline: stricter',
    'opgegeven als cholinebitartraat, vergeleken met choline: strenger',
  ],
  ['stated as the calcium salt', 'opgegeven als calciumzout'],
  [
    'stated as the hydrochloride; 1 mg is enough to keep a grown mouse',
    'opgegeven als hydrochloride; 1 mg is genoeg om een volgroeide muis op peil te houden',
  ],
  ['stated as the hydrochloride', 'opgegeven als hydrochloride'],
  ['for reproduction, natural ingredients', 'voor de voortplanting, natuurlijke ingrediënten'],
  ['for lactation', 'voor de zoogtijd'],
  ['for pregnancy and lactation', 'voor dracht en zoogtijd'],
  [
    'suggested for reproduction and lactation; the calcium salt',
    'voorgesteld voor voortplanting en zoogtijd; het calciumzout',
  ],
  ['for reproduction and lactation', 'voor voortplanting en zoogtijd'],
  ['At most: ', 'Hoogstens: '],
  [
    'most allowed in complete feed of all species: 0.5 mg per kg in all at 12 % moisture, divided by 0.88 to dry matter',
    'het meeste dat in compleet voer voor alle soorten mag: in totaal 0,5 mg per kg bij 12 % vocht, gedeeld door 0,88 naar droge stof',
  ],
  [
    'most allowed in complete feed of pigs: 2000 IU of vitamin D3 per kg, 0.025 ug each, at 12 % moisture, divided by 0.88 to dry matter',
    'het meeste dat in compleet voer voor varkens mag: 2000 IE vitamine D3 per kg, elk 0,025 µg, bij 12 % vocht, gedeeld door 0,88 naar droge stof',
  ],
  ['taken for want of a figure for the species', 'genomen omdat een cijfer voor de diersoort ontbreekt'],
  [
    'golden hamster: testes stayed sound at 4000 but less than',
    'goudhamster: teelballen bleven gezond bij 4000, maar minder dan',
  ],
  ['IU of vitamin A per kg diet, 0.3 ug of retinol each', 'IE vitamine A per kg voer, elk 0,3 µg retinol'],
  ['dried to ', 'gedroogd tot '],
  ['% moisture by calculation', '% vocht, berekend'],
];
