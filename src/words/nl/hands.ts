import type { Hands } from '../en/hands.ts';
import type { Figures } from '../figures.ts';

export const hands = (f: Figures): Hands => ({
  title: 'Gezondheid en handen',
  why: 'Waarom?',
  source: (source) => `Bron: ${source}.`,
  wash: {
    insects: 'Was je handen nadat je insecten hebt aangeraakt en houd ze weg bij je eigen eten.',
    egg: 'Was je handen nadat je eipoeder hebt aangeraakt en houd het weg bij je eigen eten.',
    why: 'Voer van dieren kan ziektekiemen dragen waar mensen ziek van worden, salmonella bijvoorbeeld.',
  },
  dust: {
    text: 'Bij zeven, gieten en mengen stuift het. Doe het langzaam, zet een raam open en draag een masker als je van stof moet hoesten.',
    why: 'Stof van granen en peulvruchten prikkelt de longen en kan astma uitlokken.',
  },
  feed: {
    water: 'Altijd vers water: van droog voer krijgt een dier dorst.',
    waterShort: 'Altijd vers water.',
    pieces: 'Maak klein wat te groot of te hard is voor een kleine bek.',
  },
  pieces: {
    large: 'Heel is dit groot en hard. Maak het klein of neem vlokken.',
    teeth: (animals) => `Problemen met het gebit: ${f.list(animals)}. Geef dit gemalen of geweekt.`,
  },
  allergens: {
    nuts: 'noten',
    peanut: 'pinda',
    sesame: 'sesam',
    insects: 'insecten',
    egg: 'ei',
    milk: 'melk',
    fish: 'vis',
    gluten: 'gluten',
    soya: 'soja',
  },
  allergy: {
    holds: (allergens) => `Hier ben je allergisch voor: ${f.list(allergens)}.`,
    traces: (allergens) => `Kan sporen bevatten van ${f.list(allergens)}.`,
    unknown: (allergens) =>
      `Of het ${f.either(allergens)} bevat, is niet bekend: er is geen ingrediëntenlijst van bewaard.`,
    way: 'Draag handschoenen, laat het niet stuiven, of laat iemand anders het doen.',
    insects: 'Wie allergisch is voor garnalen of huisstofmijt, kan ook op insecten reageren.',
    short: (allergens) => `allergie: ${f.list(allergens)}`,
    shortTraces: (allergens) => `kan sporen bevatten: ${f.list(allergens)}`,
    shortUnknown: (allergens) => `niet bekend of er ${f.either(allergens)} in zit`,
  },
  card: {
    part: 'Dierenarts, allergieën',
    title: 'Je dierenarts en je allergieën',
    lead: 'Voor de kaart van de oppas, de pagina voor de dierenarts en waarschuwingen bij ingrediënten. Het blijft in je huishouden.',
    name: 'Naam van de dierenarts',
    phone: 'Telefoon van de dierenarts',
    emergency: 'Nummer voor ’s nachts en in het weekend',
    noPhone: 'Schrijf een telefoonnummer, alleen met cijfers, spaties en + ( ) / -.',
    allergies: 'Waar ben je allergisch voor?',
    allergiesHint: 'Ingrediënten waar het in zit, zijn gemarkeerd waar je ze kiest, koopt en afweegt.',
    south: 'Ik woon ten zuiden van de evenaar',
    southHint:
      'Dan worden de dagen korter van maart tot juni. Russische dwerghamsters vallen af als de dagen kort zijn.',
    forSitter: 'Wat de oppas moet weten',
    save: 'Bewaren',
    saved: 'Bewaard.',
  },
});
