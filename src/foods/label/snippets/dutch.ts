/** Labels in Dutch. */
import type { Snippet } from './snippet.ts';

export const dutch: readonly Snippet[] = [
  {
    name: 'analytische bestanddelen',
    language: 'nl',
    text: 'Analytische bestanddelen: ruw eiwit 17%, ruw vet 5,5%, ruwe celstof 8%, ruwe as 4,2%, fosfor 0,5%',
    figures: 'PROCNT=17 FAT=5.5 FIBC=8 ASH=4.2 P=500',
  },
  {
    name: 'voedingswaarde per 100 g',
    language: 'nl',
    text: 'Voedingswaarde per 100 g\nEnergie 1580 kJ / 377 kcal\nVetten 6,5 g\nwaarvan verzadigde vetzuren 1,1 g\nKoolhydraten 60 g\nwaarvan suikers 1,0 g\nVoedingsvezel 9 g\nEiwitten 11 g\nZout 0,05 g',
    figures: 'ENERC_KCAL=377 FAT=6.5 FASAT=1.1 CHOCDF=69 SUGAR=1 FIBTG=9 PROCNT=11 NA=20',
  },
  {
    name: 'per portie (30 g)',
    language: 'nl',
    text: 'Per portie (30 g)\nEiwitten 3,3 g\nVetten 1,5 g',
    figures: 'PROCNT=11 FAT=5',
  },
  {
    name: 'in de droge stof',
    language: 'nl',
    text: 'In de droge stof: ruw eiwit 20 %, ruw vet 5 %\nVocht 10 %',
    figures: 'PROCNT=18 FAT=4.5 WATER=10',
  },
  {
    name: 'toevoegingsmiddelen',
    language: 'nl',
    text: 'Toevoegingsmiddelen per kg: vitamine A 12.000 IE, vitamine D3 1.200 IE, vitamine E 80,5 mg, koper 8 mg, jodium 1 mg, mangaan 60 mg',
    figures: 'VITA_IU>=1200 VITD_IU>=120 TOCPHA>=8.05 CU>=0.8 ID>=100 MN>=6',
  },
  {
    name: 'duizend of komma',
    language: 'nl',
    text: 'Toevoegingsmiddelen per kg: vitamine A 12.000 IE, ijzer 50 mg',
    figures: 'FE>=5',
    questions: ['number:0:12.000'],
  },
  {
    name: 'duizend of komma, beantwoord',
    language: 'nl',
    text: 'Toevoegingsmiddelen per kg: vitamine A 12.000 IE, ijzer 50 mg',
    figures: 'FE>=5 VITA_IU>=1200',
    answers: { 'number:0:12.000': '12000' },
  },
  {
    name: 'vezels zonder soort',
    language: 'nl',
    text: 'Ruw eiwit 16 %\nVezels 9 %',
    figures: 'PROCNT=16',
    questions: ['name:fibre'],
  },
  {
    name: 'minimaal en maximaal',
    language: 'nl',
    text: 'Ruw eiwit minimaal 16 %\nRuw vet max. 6 %\nVocht 8 tot 11 %',
    figures: 'PROCNT>=16 FAT<=6 WATER>=8 WATER<=11',
  },
  {
    name: 'sporen',
    language: 'nl',
    text: 'per 100 g\nsuikers sporen\nzetmeel 41 g\nvocht 9 g',
    figures: 'STARCH=41 WATER=9',
    unread: [1],
  },
  {
    name: 'tweemaal verschillend',
    language: 'nl',
    text: 'Ruw eiwit 16 %\nRuw vet 5 %\nEiwit 18 %',
    figures: 'FAT=5',
    questions: ['differ:PROCNT:value'],
  },
  {
    name: 'referentie-inname',
    language: 'nl',
    text: 'per 100 g\nVitamine C 12 mg 15% RI\nEiwitten 12 g 24% RI',
    figures: 'VITC=12 PROCNT=12',
  },
];
