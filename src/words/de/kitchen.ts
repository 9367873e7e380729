import type { Kitchen } from '../en/kitchen.ts';
import type { Figures } from '../figures.ts';

export const kitchen = (f: Figures): Kitchen => {
  const practice = 'übliche Praxis, ohne Quelle';
  return {
    practice,
    practiceNotAVet: 'übliche Praxis, ohne Quelle; kein tierärztlicher Rat',
    weighedByKeeper: 'von dir gewogen',
    saidByKeeper: 'wie du angibst',
    freezeTreatment: {
      sentence:
        'Trockenware kann Insekten als Eier oder Larven mitbringen. Üblich ist: 3 bis 4 Tage einfrieren, 3 bis 4 Tage auftauen, und beides noch einmal. Das Auftauen weckt, was den ersten Frost überlebt hat.',
      source: practice,
    },
    freezeOnePack: {
      sentence: 'Einfrieren, auftauen, und beides noch einmal, je 3 bis 4 Tage',
      source: practice,
    },
    pastBestBefore: {
      sentence:
        'Schau es dir bei gutem Licht an, bevor du es verwendest: Bei Staub, Gespinsten, Klumpen oder muffigem Geruch wird es nicht gefüttert. Drück dann auf „nicht mehr verwenden“.',
      source: practice,
    },
    dampFood: {
      sentence:
        'Feuchtes Futter schimmelt im Glas. Schimmelgifte überstehen das Trocknen und schaden der Leber schon in Spuren. Was Schimmel zeigt, wird ganz weggeworfen, nicht weitergetrocknet.',
      source:
        'EFSA CONTAM Panel 2018, zu Aflatoxinen; Wegwerfen: University of Georgia Extension, packaging and storing dried foods',
    },
    leafDust: {
      sentence:
        'Trockene Blätter zerfallen zu Staub: Lass sie in Stücken und sieb den Staub ab, bevor sie in eine Mischung kommen. Er schadet kleinen Atemwegen.',
      source: practice,
    },
    sample: {
      sentence: (grams, celsius) =>
        `Nimm etwa ${f.grams(grams, 0)} davon, wieg sie und trockne sie bei etwa ${f.degrees(celsius)}, bis zwei Wägungen im Abstand von einer Stunde gleich sind`,
      freshSentence: (grams, celsius) =>
        `Nimm etwa ${f.grams(grams, 0)} vom Frischen, klein geschnitten, wieg sie und trockne sie bei etwa ${f.degrees(celsius)}, bis zwei Wägungen im Abstand von einer Stunde gleich sind`,
      source: practice,
    },
    notAVet:
      'Kein tierärztlicher Rat. Eine eigene Mischung ersetzt nie ein Alleinfutter. Stell Futter langsam um, über 10 bis 14 Tage (übliche Praxis, ohne Quelle). Geh bei Gewichtsverlust oder Krankheit zum Tierarzt.',
    stepsInPractice:
      'Einfrieren, Trocknen und Futterumstellung folgen der üblichen Praxis (ohne Quelle): 3 bis 4 Tage einfrieren, 3 bis 4 Tage auftauen, beides zweimal; umstellen in 10 bis 14 Tagen.',
    stepPractice: {
      buy: '0: am Tag des Einkaufs ins Gefrierfach oder in den Ofen.',
      freeze: `3 bis 4 Tage (${practice}); große Beutel brauchen länger.`,
      thaw: `3 bis 4 Tage (${practice}).`,
      dry: `Etwa 6 Stunden im Umluftofen für Gemüse, länger und sanfter für Kräuter und Blätter, und du bist die ganze Zeit zu Hause: also ein Tag (${practice}).`,
      weigh: 'Ein Tag.',
      'change-over': `10 bis 14 Tage (${practice}); 0, wenn die Tiere alles davon kennen.`,
    },
    shortTreatment: 'Weniger als 3 Tage ist kürzer als üblich: Eier in den Körnern können das überleben.',
  };
};
