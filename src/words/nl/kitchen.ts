import type { Kitchen } from '../en/kitchen.ts';
import type { Figures } from '../figures.ts';

export const kitchen = (f: Figures): Kitchen => {
  const practice = 'gangbare praktijk, geen bron';
  return {
    practice,
    practiceNotAVet: 'gangbare praktijk, geen bron; geen diergeneeskundig advies',
    weighedByKeeper: 'door jou gewogen',
    saidByKeeper: 'zoals je opgeeft',
    freezeTreatment: {
      sentence:
        'Droge waren kunnen insecten meebrengen als eitjes of larven. Gebruikelijk is: 3 tot 4 dagen invriezen, 3 tot 4 dagen ontdooien, en beide nog een keer. Het ontdooien wekt wat de eerste vorst overleefde.',
      source: practice,
    },
    freezeOnePack: {
      sentence: 'Invriezen, ontdooien, en beide nog een keer, elk 3 tot 4 dagen',
      source: practice,
    },
    pastBestBefore: {
      sentence:
        'Bekijk het bij goed licht voordat je het gebruikt: bij stof, spinsel, klonten of een muffe geur wordt het niet gevoerd. Druk dan op “niet meer gebruiken”.',
      source: practice,
    },
    dampFood: {
      sentence:
        'Vochtig voer schimmelt in de pot. Schimmelgiffen overleven het drogen en schaden de lever al in sporen. Wat schimmel toont gaat helemaal weg en wordt niet verder gedroogd.',
      source:
        'EFSA CONTAM Panel 2018, over aflatoxinen; weggooien: University of Georgia Extension, packaging and storing dried foods',
    },
    leafDust: {
      sentence:
        'Droge bladeren vallen tot stof uiteen: laat ze in stukken en zeef het stof eraf voordat ze in een mengsel gaan. Het is slecht voor kleine luchtwegen.',
      source: practice,
    },
    sample: {
      sentence: (grams, celsius) =>
        `Neem ongeveer ${f.grams(grams, 0)} ervan, weeg het en droog het bij ongeveer ${f.degrees(celsius)} tot twee wegingen met een uur ertussen gelijk zijn`,
      freshSentence: (grams, celsius) =>
        `Neem ongeveer ${f.grams(grams, 0)} van het verse, klein gesneden, weeg het en droog het bij ongeveer ${f.degrees(celsius)} tot twee wegingen met een uur ertussen gelijk zijn`,
      source: practice,
    },
    notAVet:
      'Geen diergeneeskundig advies. Een eigen mengsel vervangt nooit een compleet voer. Stap langzaam over, in 10 tot 14 dagen (gangbare praktijk, geen bron). Ga bij gewichtsverlies of ziekte naar de dierenarts.',
    stepsInPractice:
      'Invriezen, drogen en overstappen gaan volgens gangbare praktijk (geen bron): 3 tot 4 dagen invriezen, 3 tot 4 dagen ontdooien, beide twee keer; overstappen in 10 tot 14 dagen.',
    stepPractice: {
      buy: '0: op de dag van de inkoop de vriezer of de oven in.',
      freeze: `3 tot 4 dagen (${practice}); grote zakken duren langer.`,
      thaw: `3 tot 4 dagen (${practice}).`,
      dry: `Ongeveer 6 uur in een heteluchtoven voor groente, langer en zachter voor kruiden en bladeren, met jou de hele tijd thuis: dus één dag (${practice}).`,
      weigh: 'Eén dag.',
      'change-over': `10 tot 14 dagen (${practice}); 0 als de dieren alles ervan kennen.`,
    },
    shortTreatment:
      'Minder dan 3 dagen is korter dan gebruikelijk: eitjes in de korrels kunnen dat overleven.',
  };
};
