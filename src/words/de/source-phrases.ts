/** Phrases of sources that Pouchful wrote itself, in German; titles of publications stay as they are. */
export const PHRASES: readonly (readonly [english: string, said: string])[] = [
  ['common practice, no source', 'übliche Praxis, ohne Quelle'],
  ['from memory, confirm before relying on it', 'aus dem Gedächtnis, vor Gebrauch prüfen'],
  ['from memory', 'aus dem Gedächtnis'],
  ['own choice', 'eigene Wahl'],
  ['read at second hand', 'aus zweiter Hand gelesen'],
  ['typed in', 'eingetippt'],
  ['read in a Dutch rendering', 'in niederländischer Fassung gelesen'],
  [
    'per kg diet at 10 % moisture, divided by 0.9 to dry matter',
    'je kg Futter mit 10 % Feuchte, durch 0,9 geteilt auf Trockenmasse',
  ],
  [
    '3.8 to 4.1 kcal ME per g at 10 % moisture, divided by 0.9 to dry matter',
    '3,8 bis 4,1 kcal je g mit 10 % Feuchte, durch 0,9 geteilt auf Trockenmasse',
  ],
  [
    'in a diet richer or poorer in energy the other figures would be others',
    'bei Futter mit mehr oder weniger Energie wären die anderen Zahlen andere',
  ],
  ['stated as folic acid, compared with total folate', 'als Folsäure angegeben, verglichen mit Folat gesamt'],
  [
    'stated as vitamin E, compared with alpha-tocopherol',
    'als Vitamin E angegeben, verglichen mit Alpha-Tocopherol',
  ],
  [
    'phylloquinone; the 4 mg found enough for growth there were menadione, which is another substance and is not counted here',
    'Phyllochinon; die 4 mg, die dort für das Wachstum genügten, waren Menadion, ein anderer Stoff, der hier nicht zählt',
  ],
  ['for growth', 'für das Wachstum'],
  ['stated as lipid', 'als Lipid angegeben'],
  [
    'cystine may stand for a half of it or more, which is not credited here: stricter',
    'Cystin kann die Hälfte davon oder mehr ersetzen, was hier nicht angerechnet wird: strenger',
  ],
  [
    'tyrosine may stand for half of it, which is not credited here: stricter',
    'Tyrosin kann die Hälfte davon ersetzen, was hier nicht angerechnet wird: strenger',
  ],
  [
    'stated as retinol, compared with retinol activity',
    'als Retinol angegeben, verglichen mit der Retinolaktivität',
  ],
  ['stated as RRR-alpha-tocopherol', 'als RRR-Alpha-Tocopherol angegeben'],
  [
    'stated as phylloquinone, by the need of the rat',
    'als Phyllochinon angegeben, nach dem Bedarf der Ratte',
  ],
  [
    'stated as choline bitartrate, compared with choline: stricter',
    'als Cholinbitartrat angegeben, verglichen mit Cholin: strenger',
  ],
  ['stated as the calcium salt', 'als Calciumsalz angegeben'],
  [
    'stated as the hydrochloride; 1 mg is enough to keep a grown mouse',
    'als Hydrochlorid angegeben; 1 mg genügt, um eine ausgewachsene Maus zu erhalten',
  ],
  ['stated as the hydrochloride', 'als Hydrochlorid angegeben'],
  ['for reproduction, natural ingredients', 'für die Fortpflanzung, natürliche Zutaten'],
  ['for lactation', 'für die Säugezeit'],
  ['for pregnancy and lactation', 'für Trächtigkeit und Säugezeit'],
  [
    'suggested for reproduction and lactation; the calcium salt',
    'vorgeschlagen für Fortpflanzung und Säugezeit; das Calciumsalz',
  ],
  ['for reproduction and lactation', 'für Fortpflanzung und Säugezeit'],
  ['At most: ', 'Höchstens: '],
  [
    'most allowed in complete feed of all species: 0.5 mg per kg in all at 12 % moisture, divided by 0.88 to dry matter',
    'das Meiste, das in Alleinfutter für alle Arten erlaubt ist: insgesamt 0,5 mg je kg bei 12 % Feuchte, durch 0,88 geteilt auf Trockenmasse',
  ],
  [
    'most allowed in complete feed of pigs: 2000 IU of vitamin D3 per kg, 0.025 ug each, at 12 % moisture, divided by 0.88 to dry matter',
    'das Meiste, das in Alleinfutter für Schweine erlaubt ist: 2000 IE Vitamin D3 je kg, je 0,025 µg, bei 12 % Feuchte, durch 0,88 geteilt auf Trockenmasse',
  ],
  ['taken for want of a figure for the species', 'genommen, weil eine Zahl für die Tierart fehlt'],
  [
    'golden hamster: testes stayed sound at 4000 but less than',
    'Goldhamster: Hoden blieben gesund bei 4000, aber weniger als',
  ],
  ['IU of vitamin A per kg diet, 0.3 ug of retinol each', 'IE Vitamin A je kg Futter, je 0,3 µg Retinol'],
  ['dried to ', 'getrocknet auf '],
  ['% moisture by calculation', '% Feuchte, errechnet'],
];
