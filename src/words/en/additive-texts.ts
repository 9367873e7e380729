/** What is said of an additive, by its id. Sources stand beside the list itself. */
const SUGAR =
  'Added sugar feeds no need of a hamster; golden hamsters on a 60 % fructose diet became glucose intolerant. How much a few percent does was not tested.';
const DYE =
  'A dye serves the eye of the buyer alone. Harm to hamsters at feed amounts is not shown. A good mix does without it.';
const ANTIOXIDANT = 'A man-made antioxidant; harm to hamsters at feed amounts is not shown.';
const BULK = 'Adds bulk and fibre and little else; a keeper pays grain price for it.';
const GROUP = 'A group name: what stands behind it may change from bag to bag.';

export const ADDITIVE_TEXTS = {
  sugar: {
    name: 'sugar',
    why: SUGAR,
  },
  glucose: {
    name: 'glucose, dextrose or glucose syrup',
    why: SUGAR,
  },
  fructose: {
    name: 'fructose',
    why: SUGAR,
  },
  molasses: {
    name: 'molasses',
    why: SUGAR,
  },
  honey: {
    name: 'honey',
    why: SUGAR,
  },
  syrup: {
    name: 'syrup',
    why: SUGAR,
  },
  'cane-juice': {
    name: 'cane juice or jaggery',
    why: SUGAR,
  },
  caramel: {
    name: 'caramel',
    why: 'Caramel is cooked sugar; as a colour (E 150) it is added in traces only. A good mix does without it.',
  },
  maltodextrin: {
    name: 'maltodextrin',
    why: 'Maltodextrin is starch cut short and acts on blood sugar much like sugar.',
  },
  'juice-concentrate': {
    name: 'fruit juice concentrate',
    why: 'Juice boiled down is mostly sugar, whatever the fruit.',
  },
  tartrazine: {
    name: 'tartrazine (yellow)',
    why: 'The European Union allows tartrazine for small rodents; it serves the eye of the buyer alone. A good mix does without it.',
  },
  'quinoline-yellow': {
    name: 'quinoline yellow',
    why: DYE,
  },
  'sunset-yellow': {
    name: 'sunset yellow',
    why: 'The European Union allows sunset yellow for small rodents, and up to 750 mg in a kilogram of feed was judged safe for them; it serves the eye of the buyer alone. A good mix does without it.',
  },
  azorubine: {
    name: 'azorubine (red)',
    why: DYE,
  },
  'amaranth-dye': {
    name: 'amaranth (red dye, not the grain)',
    why: DYE,
  },
  ponceau: {
    name: 'ponceau 4R (red)',
    why: DYE,
  },
  erythrosine: {
    name: 'erythrosine (red)',
    why: 'More than half of erythrosine is iodine. For cats the amount asked for was judged not safe; hamsters were not looked at. A good mix does without it.',
  },
  'allura-red': {
    name: 'allura red',
    why: 'Assessed for small mammals kept as pets; it serves the eye of the buyer alone. A good mix does without it.',
  },
  'patent-blue': {
    name: 'patent blue',
    why: DYE,
  },
  indigotine: {
    name: 'indigotine (blue)',
    why: DYE,
  },
  'brilliant-blue': {
    name: 'brilliant blue',
    why: DYE,
  },
  'green-s': {
    name: 'green S',
    why: DYE,
  },
  'brilliant-black': {
    name: 'brilliant black',
    why: DYE,
  },
  'brown-ht': {
    name: 'brown HT',
    why: DYE,
  },
  'titanium-dioxide': {
    name: 'titanium dioxide (white)',
    why: 'The European Union no longer allows it as a food or feed additive. A good mix does without it.',
  },
  'artificial-colours': {
    name: 'artificial colours',
    why: 'Which dyes is not said. A good mix does without it.',
  },
  colourants: {
    name: 'colourants, not named',
    why: 'A European feed label may name the group alone, so a dye may stand behind it; ask the maker which.',
  },
  bha: {
    name: 'BHA (butylated hydroxyanisole)',
    why: 'At 1 % of the feed BHA made the forestomach lining of golden hamsters overgrow; feed holds at most 150 mg in a kilogram, which was judged safe for all species but cats at the time. A good mix does without it.',
  },
  bht: {
    name: 'BHT (butylated hydroxytoluene)',
    why: 'BHT was judged safe for chickens and pigs at 150 mg in a kilogram of feed; for other species data were lacking. A good mix does without it.',
  },
  ethoxyquin: {
    name: 'ethoxyquin',
    why: 'The European Union suspended ethoxyquin in feed in 2017 and refused it in 2022: its safety could not be shown, and one breakdown product may harm genes. A good mix does without it.',
  },
  'propyl-gallate': {
    name: 'propyl gallate',
    why: ANTIOXIDANT,
  },
  tbhq: {
    name: 'TBHQ',
    why: ANTIOXIDANT,
  },
  sorbate: {
    name: 'sorbic acid or potassium sorbate',
    why: 'Judged safe for all animal species up to 3400 mg potassium sorbate in a kilogram of feed; a dry mix hardly needs it.',
  },
  benzoate: {
    name: 'benzoic acid or benzoates',
    why: 'A preservative of moist food; a dry mix hardly needs it.',
  },
  sulphite: {
    name: 'sulphites',
    why: 'Sulphites keep dried fruit bright and destroy thiamin (vitamin B1).',
  },
  nitrite: {
    name: 'sodium or potassium nitrite',
    why: 'Nitrite binds the oxygen carrier in the blood and has no place in a dry mix.',
  },
  propionate: {
    name: 'propionic acid or propionates',
    why: 'A mould inhibitor, safe by all that is known; it may hint at damp storage.',
  },
  'propylene-glycol': {
    name: 'propylene glycol',
    why: 'It keeps soft food moist and hinders mould. In cats it harms the red blood cells, and it is not allowed in their food in the United States; nothing was found on hamsters, and it feeds no need of theirs.',
  },
  'permitted-additives': {
    name: 'permitted additives, not named',
    why: 'A group name may stand for BHA, BHT or a dye; ask the maker which.',
  },
  preservatives: {
    name: 'preservatives, not named',
    why: 'A group name may stand for BHA or BHT; ask the maker which.',
  },
  hulls: {
    name: 'hulls, husks or shells',
    why: BULK,
  },
  straw: {
    name: 'straw or straw meal',
    why: BULK,
  },
  middlings: {
    name: 'middlings',
    why: 'What is left of milling flour: between bran and flour, fit to eat but cheap.',
  },
  'cereal-by-products': {
    name: 'cereal by-products',
    why: "Which ones is not said: bran, hulls, middlings or distillers' grains.",
  },
  'bakery-by-products': {
    name: 'bakery by-products',
    why: 'Old bread and biscuits, with their salt, sugar and fat.',
  },
  cellulose: {
    name: 'cellulose powder',
    why: 'Purified plant fibre: harmless bulk.',
  },
  'cob-meal': {
    name: 'maize cob meal',
    why: BULK,
  },
  'beet-pulp': {
    name: 'sugar beet pulp',
    why: 'What is left of beet once the sugar is out: mostly fibre, with a few percent of sugar. Unmolassed pulp holds no added sugar.',
  },
  'vegetable-derivatives': {
    name: 'derivatives of vegetable origin',
    why: GROUP,
  },
  'animal-derivatives': {
    name: 'meat and animal derivatives',
    why: GROUP,
  },
  'by-products': {
    name: 'by-products',
    why: GROUP,
  },
  flavourings: {
    name: 'flavourings, not named',
    why: 'Added to please; which is not said.',
  },
};

export type AdditiveTexts = typeof ADDITIVE_TEXTS;
