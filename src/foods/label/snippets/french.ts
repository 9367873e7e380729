/** Labels in French. */
import type { Snippet } from './snippet.ts';

export const french: readonly Snippet[] = [
  {
    name: 'constituants analytiques',
    language: 'fr',
    text: 'Constituants analytiques : protéines brutes 17 %, matières grasses brutes 5,5 %, cellulose brute 8 %, cendres brutes 4,2 %, calcium 0,8 %',
    figures: 'PROCNT=17 FAT=5.5 FIBC=8 ASH=4.2 CA=800',
  },
  {
    name: 'tableau nutritionnel',
    language: 'fr',
    text: 'Valeurs nutritionnelles moyennes pour 100 g\nÉnergie 1 580 kJ / 377 kcal\nMatières grasses 6,5 g\ndont acides gras saturés 1,1 g\nGlucides 60 g\ndont sucres 1 g\nFibres alimentaires 9 g\nProtéines 11 g\nSel 0,05 g',
    figures: 'ENERC_KCAL=377 FAT=6.5 FASAT=1.1 CHOCDF=69 SUGAR=1 FIBTG=9 PROCNT=11 NA=20',
  },
  {
    name: 'par portion de 30 g',
    language: 'fr',
    text: 'Par portion de 30 g\nProtéines 3,3 g\nLipides 1,5 g',
    figures: 'PROCNT=11 FAT=5',
  },
  {
    name: 'sur matière sèche',
    language: 'fr',
    text: 'Analyse moyenne sur matière sèche : protéines brutes 20 % - matières grasses brutes 5 %\nHumidité 10 %',
    figures: 'PROCNT=18 FAT=4.5 WATER=10',
  },
  {
    name: 'fibres sans précision',
    language: 'fr',
    text: 'Protéines 17 % ; matières grasses 5 % ; fibres 8 %',
    figures: 'PROCNT=17 FAT=5',
    questions: ['name:fibre'],
  },
  {
    name: 'additifs par kg',
    language: 'fr',
    text: 'Additifs nutritionnels par kg : vitamine A 12 000 UI, vitamine D3 1 200 UI, vitamine E 80 mg, cuivre (sulfate de cuivre) 8 mg, fer 50 mg',
    figures: 'VITA_IU>=1200 VITD_IU>=120 TOCPHA>=8 CU>=0.8 FE>=5',
  },
  {
    name: 'minimum et maximum',
    language: 'fr',
    text: 'Protéine brute (min.) 16 %\nMatière grasse brute max. 6 %\nCendres au plus 5 %\nHumidité de 8 à 11 %',
    figures: 'PROCNT>=16 FAT<=6 ASH<=5 WATER>=8 WATER<=11',
  },
  {
    name: 'traces et absence de chiffre',
    language: 'fr',
    text: 'pour 100 g\nsucres traces\nsel\nprotéines 12 g',
    figures: 'PROCNT=12',
    unread: [1, 2],
  },
  {
    name: 'oméga 3 et extrait non azoté',
    language: 'fr',
    text: 'pour 100 g\noméga 3 : 2 g\nextrait non azoté 52 g\namidon 40 g',
    figures: 'STARCH=40',
    unread: [1, 2],
  },
  {
    name: 'VNR à part',
    language: 'fr',
    text: 'Pour 100 g\nVitamine C 12 mg (15 % VNR*)\nFer 2,1 mg (15 % VNR*)\n*Valeurs nutritionnelles de référence',
    figures: 'VITC=12 FE=2.1',
  },
  {
    name: 'espace fine insécable',
    language: 'fr',
    text: 'Pour 100\u202fg\nÉnergie 1\u202f255,2\u202fkJ\nProtéines 11,5\u00a0g',
    figures: 'ENERC_KCAL=300 PROCNT=11.5',
  },
  {
    name: 'une portion sans grammes',
    language: 'fr',
    text: 'Par portion\nProtéines 3 g',
    figures: '',
    questions: ['serving'],
  },
];
