/** Where the advice on hands, dust and allergies comes from. */
export const HANDS_SOURCES = {
  wash: 'advice of the Centers for Disease Control and Prevention on pet food, read in a report of it (HealthDay 2014)',
  dust: 'Health and Safety Executive, Grain dust, hse.gov.uk/agriculture/topics/grain-dust.htm',
  insects: 'EFSA NDA Panel 2021, EFSA Journal 19(8):6778, doi 10.2903/j.efsa.2021.6778',
  common: 'common practice, no source',
} as const;
