import type { Refusals } from '../en/refusals.ts';
import type { Figures } from '../figures.ts';

export const refusals = (f: Figures): Refusals => ({
  heading: 'Als er iets blijft liggen',
  foods: 'Ingrediënten van het mengsel',
  takeBack: 'Terugnemen',
  refuses: (animal, food, mixes) => `${animal} weigert ${food}: niet meer in ${f.list(mixes)}.`,
  mayBeFed: (animal, food) => `${animal} mag weer krijgen: ${food}.`,
  first: {
    none: 'Geen mengsel voldoet aan deze regels. Wat botst en wat helpt, staat hoger op deze pagina. Daarna staat hier wat er gebeurt als een ingrediënt blijft liggen en wat het kan vervangen.',
    out: 'Het mengsel is zo niet binnen bereik. Maak het eerst passend. Daarna staat hier wat er gebeurt als een ingrediënt blijft liggen en wat het kan vervangen.',
  },
  safety: {
    safe: 'Elk ingrediënt mag blijven liggen: wat er wordt gegeten, blijft binnen bereik.',
    unsafe:
      'Als sommige ingrediënten blijven liggen, is het rantsoen buiten bereik; welke en hoe, staat hieronder.',
    impossible:
      'Met deze ingrediënten blijft geen mengsel binnen bereik, welk ook blijft liggen. Wat botst en wat zou helpen, staat boven aan deze pagina; of geef de wens hier op.',
    wanted: 'Van dit mengsel wordt gevraagd dat elk ingrediënt mag blijven liggen.',
    giveUp: 'Dat opgeven',
    makeSafe: 'Veilig maken',
    looking: 'Zoekt een mengsel dat binnen bereik blijft, welk ingrediënt ook blijft liggen…',
    noAnswer: 'Er kwam geen antwoord; probeer het opnieuw.',
    changed: 'Het mengsel is intussen veranderd; vraag het opnieuw.',
    isSafe: 'Het mengsel past opnieuw: elk ingrediënt mag blijven liggen.',
    gaveUp: 'Als een ingrediënt blijft liggen, mag het mengsel buiten bereik raken.',
  },
  food: {
    share: (share) => f.percent(share, 1),
    mayBeLeft: '✓ mag blijven liggen',
    breaks: (wrong) => `! ${wrong}`,
    spokenSafe: (food, share) => `${food}, ${f.percent(share, 1)}: mag blijven liggen`,
    spoken: (food, share, wrong) => `${food}, ${f.percent(share, 1)}: ${wrong}`,
    fine: 'Ook zonder dit blijft wat er wordt gegeten binnen bereik.',
    refusesThis: (animal) => `${animal} weigert dit`,
    leaves: () => 'Het gaat dan uit elk mengsel voor dat dier.',
    low: (what) => `${what} te laag`,
    high: (what) => `${what} te hoog`,
    aRule: 'een regel',
    aShare: 'een aandeel',
    ratio: (over, under) => `${over} tot ${under}`,
    andMore: (first, more) => `${first} en nog ${f.number(more)}`,
  },
  swap: {
    heading: 'Wat ervoor in de plaats kan komen',
    heldHint:
      'Dit aandeel wordt vastgehouden. Laat het los, dan staat hier wat ervoor in de plaats kan komen.',
    othersHeld: 'Vastgehouden ingrediënten houden bij een ruil hun aandeel.',
    done: (out, other) =>
      `${out} is geruild voor ${other}; ${out} blijft met 0 % in de lijst. “Ongedaan maken” draait het terug.`,
    further: (share, all) => `nog eens ${share}, dan samen ${f.percent(all, 1)}`,
    unsure: 'van wat het bevat is iets niet bekend, dus de regels gelden misschien niet',
    swap: 'Ruilen',
    swapOf: (out, other) => `${out} ruilen voor ${other}`,
    inMix: 'in het mengsel',
    fromTables: 'uit de tabellen',
    listed: 'in de lijst, met 0 %',
    hardly: (share) => `${f.percent(share)} (nauwelijks een ander aandeel)`,
    upTo: (share, high) => `${f.percent(share)} (tot ${f.percent(high)})`,
    from: (share, low, high) => `${f.percent(share)} (${f.number(low)} tot ${f.percent(high)})`,
  },
});
