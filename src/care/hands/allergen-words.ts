/**
 * Words by which foods are known that a keeper may be allergic to, in three languages, written as
 * `foods/cautions/phrases.ts` says. They are recognised and never said.
 *
 * What belongs to each: Regulation (EU) No 1169/2011, Annex II, from which pine nuts and chestnuts are absent: they are in
 * here, since people allergic to nuts are commonly told to keep from them too (common practice, no source). Shrimp and
 * other crustaceans stand with insects: who is allergic to the one may be to the other (EFSA NDA Panel 2021, EFSA Journal
 * 19(8):6778, doi 10.2903/j.efsa.2021.6778).
 */
import type { Allergen } from '../model.ts';

type Spoken = 'en' | 'de' | 'nl';

export const ALLERGEN_WORDS: Readonly<Record<Allergen, Readonly<Record<Spoken, string>>>> = {
  nuts: {
    en: 'nut, nuts, almond, hazelnut, hazel, filbert, cobnut, walnut, cashew, pecan, brazil nut, brazilnut, pistachio, macadamia, pine nut, chestnut, beechnut, hickory nut, marzipan, nougat, praline, pine kernel, pinenut, pignoli, beech mast',
    de: 'nuss, nüsse, *nuss, *nüsse, nuss*, *nusskern, *nusskerne, mandel, mandel*, hasel, cashewkern, pekan, pistazie, macadamia, pinienkern, zirbelkern, marone, esskastanie, buchecker, maroni, marzipan, nougat, krokant',
    nl: 'noot, noten, *noot, *noten, noten*, *nootje, *nootjes, amandel, amandel*, cashew, pecan, pistache, macadamia, pijnboompit, pijnboompitten, kastanje, kastanjes, marsepein, noga',
  },
  peanut: {
    en: 'peanut, pea nut, groundnut, ground nut, monkey nut, arachis',
    de: 'erdnuss, erdnüsse, erdnuss*',
    nl: 'pinda, pinda*, aardnoot, aardnoten, grondnoot',
  },
  sesame: { en: 'sesame, tahini, benne, gingelly', de: 'sesam, sesam*', nl: 'sesam, sesam*, tahin' },
  insects: {
    en: 'insect, mealworm, meal worm, mealie, mealie worm, mealies, buffalo worm, buffaloworm, superworm, super worm, morio worm, zophobas, calci worm, calciworm, phoenix worm, waxworm, silkworm, cricket, grasshopper, locust, black soldier fly, bsf, bsfl, larva, larvae, tenebrio, hermetia, acheta, shrimp, gammarus, daphnia, krill, prawn, crab',
    de: 'insekt, insekten, insekten*, mehlwurm, mehlwürmer, *mehlwurm, *mehlwürmer, mehlwurm*, mehlkäfer, *käferlarven, buffalowurm, buffalowürmer, zophobas, wachsmotte, wachsmottenlarven, seidenraupe, seidenraupen*, heimchen, grillen*, heuschrecke, soldatenfliege, *fliegenlarven, larve, larven, garnele, krabbe, bachflohkrebs, bachflohkrebse, wasserflöhe',
    nl: 'insect, insecten, insecten*, meelworm, meelwormen, buffaloworm, buffalowormen, wasmot, zijderups, zijderups*, morioworm, moriowormen, krekel, *krekel, *krekels, sprinkhaan, soldatenvlieg, soldaatvlieg, soldaatvlieg*, larve, larven, garnaal, garnalen, vlokreeft, vlokreeftje, vlokreeftjes, watervlo',
  },
  egg: {
    en: 'egg, eggs, albumen, egg white, egg yolk, eggshell',
    de: 'ei, eier, eipulver, volleipulver, vollei, eigelb, eigelbpulver, eiklar, eiklar*, eiweißpulver, getrocknetes eiweiß, trockeneiweiß, eierschale, eierschalen, hühnerei, hühnereier, wachtelei, wachteleier',
    nl: 'ei, eieren, eipoeder, eiwitpoeder, gedroogd eiwit, heelei, heeleipoeder, eigeel, eierschaal, eierschalen, kippenei, kippeneieren, kwartelei',
  },
  milk: {
    en: 'milk, whey, casein, caseinate, lactose, cheese, yogurt, yoghurt, butter, buttermilk, cream, curd, quark, cottage cheese, dairy, kefir',
    de: 'milch, milch*, *milch, *milchpulver, molke, molken*, kasein, caseinat, laktose, lactose, käse, *käse, joghurt, *joghurt, quark, *quark, butter, sahne, buttermilch',
    nl: 'melk, melk*, *melk, wei, weipoeder, wei eiwit, caseïne, caseïnaat, lactose, kaas, *kaas, yoghurt, kwark, hüttenkäse, boter, slagroom, karnemelk',
  },
  fish: {
    en: 'fish, fishmeal, fish meal, salmon, tuna, cod, herring, sardine, anchovy, trout, mackerel, haddock, pollock, halibut, whitefish, smelt',
    de: 'fisch, fisch*, *fisch, lachs, thunfisch, hering, sardine, sardelle, forelle, makrele, kabeljau, dorsch, sprotte, seelachs, stint, felchen, renke, maräne',
    nl: 'vis, vismeel, zalm, tonijn, haring, sardine, ansjovis, forel, makreel, kabeljauw, sprot, spiering, marene, *vis',
  },
  gluten: {
    en: 'gluten, wheat, spelt, rye, barley, oat, oats, oat*, porridge, wheat*, bulghur, burghul, kamut, khorasan, triticale, einkorn, emmer, farro, durum, semolina, bulgur, couscous, freekeh, seitan, malt, bread, breadcrumb, rusk, pasta, macaroni, spaghetti, noodle, biscuit, cookie, cracker, crispbread, muesli, granola',
    de: 'gluten, weizen, weizen*, *weizen, dinkel, dinkel*, grünkern, roggen, roggen*, gerste, gersten*, *gerste, graupen, *graupen, hafer, hafer*, *hafer, kuskus, kamut, triticale, einkorn, emmer, grieß, bulgur, couscous, seitan, malz, *malz, brot, *brot, zwieback, nudel, nudeln, spaghetti, makkaroni, keks, müsli, backwaren, bäckereierzeugnisse, getreide',
    nl: 'gluten, tarwe, tarwe*, *tarwe, spelt, spelt*, rogge, rogge*, gerst, gerst*, *gerst, gort, *gort, haver, haver*, *haver, bulghur, kamut, triticale, eenkoorn, emmer, griesmeel, bulgur, couscous, seitan, mout, *mout, brood, *brood, beschuit, pasta, macaroni, spaghetti, koek, koekje, muesli, bakkerijproducten, granen',
  },
  soya: {
    en: 'soy, soya, soybean, soyabean, soya bean, tofu, tempeh, edamame, miso, bean curd',
    de: 'soja, soja*, tofu, tempeh',
    nl: 'soja, soja*, tofu, tahoe, tempé, tempeh',
  },
};

/** Things called after what they are not. */
export const OTHER_THINGS: Readonly<Record<Allergen, string>> = {
  nuts: 'coconut, nutmeg, tiger nut, tigernut, chufa, doughnut, water chestnut, horse chestnut, peanut, pea nut, groundnut, ground nut, monkey nut, betel nut, soy nut, soy nuts, soya nuts, butternut squash, kokosnuss, kokosnüsse, kokosnussraspel, muskatnuss, erdnuss, erdnüsse, erdnusskern, erdnusskerne, nüsslisalat, erdmandel, tigernuss, tigernüsse, wasserkastanie, rosskastanie, kokosnoot, nootmuskaat, aardnoot, grondnoot, tijgernoot, aardamandel, paardenkastanje',
  peanut: '',
  sesame: '',
  insects: 'crab apple',
  egg: 'egg plant',
  milk: 'coconut milk, almond milk, soy milk, soya milk, oat milk, rice milk, hemp milk, peanut butter, almond butter, nut butter, cashew butter, sesame butter, sunflower seed butter, seed butter, cocoa butter, shea butter, apple butter, butter bean, butter beans, butter lettuce, butterhead, butterbur, butternut, milk thistle, milk vetch, cream of tartar, bean curd, soybean curd, kokosmilch, mandelmilch, sojamilch, hafermilch, reismilch, erdnussbutter, kakaobutter, sheabutter, butternuss, butterkohl, butternusskürbis, milchdistel, milchlattich, leberkäse, kokosmelk, amandelmelk, sojamelk, havermelk, rijstmelk, pindakaas, cacaoboter, boterboon, boterbonen, melkdistel',
  fish: 'starfish, tintenfisch',
  gluten:
    'buckwheat, buck wheat, st john’s bread, saint john’s bread, corn gluten, corn gluten meal, maize gluten, rice noodle, rice noodles, buchweizen, buchweizen*, maiskleber, johannisbrot, johannisbrot*, johannesbrood, haferwurzel, haferwurz, reisnudeln, breadfruit, bread fruit, brotfrucht, broodvrucht',
  soya: '',
};

/** Words that are spelt right and are no slip of one of those above. */
export const NO_SLIPS: readonly string[] = [
  'broad',
  'marane',
  'marene',
  'pekin',
  'granule',
  'granules',
  'grilled',
  'batter',
  'paste',
];
