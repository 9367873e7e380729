/** What the caution list says to a keeper, by the id of the caution. Sources stand beside the list itself. */
const GATHER =
  'Gather only plants you know for certain, away from roads and sprayed fields; when in doubt leave it.';

export const CAUTION_TEXTS = {
  'raw-kidney-type-beans': {
    title: 'Raw kidney beans and their kin',
    reason:
      "Dried kidney, navy, pinto, lima and other garden beans hold lectins that upset the gut, and raw kidney beans killed rats in feeding trials. Nothing was found on hamsters, whose gut is much like the rat's.",
    way: 'Never weigh them raw into a mix: soak overnight, throw the water away, boil hard for 30 minutes, then dry, and use the row of the cooked bean.',
  },
  'kidney-type-beans': {
    title: 'Kidney beans and their kin: cook them',
    reason:
      'Dried kidney, navy, pinto, lima and other garden beans are harmful raw and fit to feed once boiled. Slow warming is not enough.',
    way: 'Soak at least 5 hours, throw the water away, boil hard for 30 minutes, then dry.',
  },
  'soya-raw': {
    title: 'Raw soya beans: heat them',
    reason:
      'Young golden hamsters fed raw soya flour for 32 days grew much more poorly than those fed heated flour, and their pancreas was enlarged: the trypsin inhibitors spoil protein digestion. In a longer trial, 15 months, the pancreas was not enlarged.',
    way: 'Boil or dry-roast them through, or buy toasted soya flakes.',
  },
  'raw-soya-beans': {
    title: 'Raw soya beans',
    reason:
      'Young golden hamsters fed raw soya flour grew far worse than those fed heated flour, and their pancreas was enlarged.',
    way: 'Never weigh them raw into a mix: boil or dry-roast them through, or buy toasted soya.',
  },
  'low-lectin-pulses-raw': {
    title: 'Raw lentils, peas, chickpeas, mung beans: a fifth at most',
    reason:
      'Their lectins did no harm in rats, but raw they keep some trypsin inhibitor, and rats digested raw chickpeas worse than cooked ones. Young pigs grew as well with up to 22 % of lentils or 36 % of raw peas in all they ate, and worse with 30 % of lentils; nothing was found on hamsters.',
    way: 'Hold all raw pulses together to a fifth of the mix, and feed more only flaked, roasted, sprouted, or boiled and dried.',
  },
  'broad-bean-raw': {
    title: 'Raw broad beans: little, better cooked',
    reason:
      'Broad (field) beans hold vicine and convicine, which can break up red blood cells in sensitive people; whether hamsters are sensitive is not known. Rats fed raw ones for 28 days grew like those fed heated ones, but used the protein worse.',
    way: 'Hold raw or flaked ones to 5 % of the mix, or boil and skin them and feed them dried.',
  },
  'lupin-raw': {
    title: 'Raw lupin seeds',
    reason:
      'Bitter lupins hold alkaloids that act on nerves and heart; sweet lupins hold less. For companion animals no safe amount could be worked out.',
    way: 'Use sweet lupins sold as food only, soaked in changed water and boiled; never gather garden lupins.',
  },
  'vetch-grass-pea': {
    title: 'Vetch and grass pea',
    reason:
      'Grass pea and its kin (Lathyrus) hold an amino acid that lames people and animals who live on it for months; vetch seeds hold others that harm nerves. Both come into pigeon and bird mixes.',
    way: 'Use peas or lentils, and pick the round dark seeds of vetch out of bird mixes.',
  },
  'onion-family': {
    title: 'Onion family',
    reason:
      'Onion, garlic, leek, chives and shallot break up red blood cells in dogs, cats and farm animals, raw, cooked or as powder. Garlic is three to five times as strong as onion. There are no figures for hamsters.',
    way: 'Leave them out in every form, also as seasoning in cooked food.',
  },
  citrus: {
    title: 'Citrus fruit',
    reason:
      'Keepers leave citrus out as too sour for mouth and pouches. No study on hamsters was found, so this rests on habit alone.',
    way: 'Use rose hip or blackcurrant where vitamin C or colour is wanted.',
  },
  avocado: {
    title: 'Avocado',
    reason:
      'Flesh, leaf, skin and stone hold persin, which damages heart muscle and udder; mice, rats and guinea pigs are among the animals harmed.',
    way: 'Leave it out; for fat use a few seeds instead.',
  },
  chocolate: {
    title: 'Chocolate and cocoa',
    reason:
      'Cocoa holds theobromine and caffeine, which race the heart; a hamster weighs so little that a crumb counts. Chocolate also sticks in the pouches.',
    way: 'Leave it out; carob flour has the colour and none of the theobromine.',
  },
  caffeine: {
    title: 'Coffee, tea and cola',
    reason:
      'Caffeine races the heart and nerves, and a hamster weighs so little that a few leaves or grounds count. Herb teas without tea leaf are not meant.',
    way: 'Use dried herbs that are not tea or mate, such as peppermint.',
  },
  alcohol: {
    title: 'Alcohol',
    reason: 'Alcohol harms brain and liver, and a hamster weighs so little that a sip is a heavy dose.',
    way: 'Leave it out; cooked food must have been cooked without it.',
  },
  'stone-fruit-kernels': {
    title: 'Stone-fruit kernels and stones',
    reason:
      'Kernels of apricot, peach, plum and cherry release cyanide when chewed; three small apricot kernels are the most a grown person may safely eat at once.',
    way: 'Feed only the flesh, with the stone taken out.',
  },
  'stone-fruit': {
    title: 'Stone fruit: take the stone out',
    reason:
      'The flesh is fit to feed in small bits; the kernel inside the stone releases cyanide when chewed.',
    way: 'Stone the fruit and throw the stones away where no animal finds them.',
  },
  'apple-pips': {
    title: 'Apple and pear pips: core the fruit',
    reason:
      'Pips hold a little amygdalin, which releases cyanide when chewed; a few do no known harm, but they are easily cut out.',
    way: 'Core the fruit before you cut or dry it.',
  },
  'bitter-almond': {
    title: 'Bitter almonds',
    reason:
      'Bitter almonds hold far more amygdalin than most seeds eaten as food and release cyanide when chewed.',
    way: 'Use hazelnut or walnut instead.',
  },
  almond: {
    title: 'Almonds',
    reason:
      'Sweet almonds are harmless as food, but a bitter one may be among them, and one bitter almond is much for a hamster.',
    way: 'Use hazelnut or walnut instead, or almonds sold as sweet, in bits.',
  },
  linseed: {
    title: 'Linseed',
    reason:
      'Linseed holds cyanogenic glycosides, which give off cyanide once the seed is crushed or chewed: feed law allows 250 mg of hydrocyanic acid in a kilogram of linseed but 50 mg in a kilogram of complete feed, and the most that was found in a sample is 407 mg. At 5 % of the mix even that sample adds some 20 mg to a kilogram, and the fat stays low besides.',
    way: 'Hold it to 5 % of the mix, whole and fresh; sesame, hemp or pumpkin seed can take the rest.',
  },
  'brazil-nut': {
    title: 'Brazil nuts',
    reason:
      'Brazil nuts hold some 19 to 49 mg of selenium in a kilogram on the average and single nuts over 100 mg, where the mouse needs 0.15 mg; fed to rats, the selenium of such nuts harmed the liver as any other does.',
    way: 'Use hazelnut or walnut.',
  },
  'poppy-seed': {
    title: 'Poppy seed',
    reason:
      'Clean poppy seed holds no opium alkaloids, but dust and sap from the capsule leave morphine on it, in some packs enough to pass the safe amount for people.',
    way: 'Buy seed sold as food, wash and dry it, and hold it to a pinch; sesame or chia do as well.',
  },
  'poppy-heads': {
    title: 'Poppy heads and poppy straw',
    reason:
      'The capsule and stalk of the opium poppy hold morphine and its kin; a dry head is poison for an animal of this size.',
    way: 'Give an ear of millet or a sunflower head to pick at.',
  },
  'mustard-seed': {
    title: 'Mustard',
    reason:
      'Mustard seed, chewed or ground and wetted, gives off mustard oils that burn mouth and gut, and its glucosinolates hold the thyroid back.',
    way: 'Leave it out, or let no more than a few whole seeds of a bird mix pass; use sesame or niger seed.',
  },
  rapeseed: {
    title: 'Rapeseed',
    reason:
      'Rapeseed holds glucosinolates, which act against the thyroid and spoil the taste, and old kinds much erucic acid; seed bred for oil holds less of both, but a bag does not tell which it is.',
    way: 'Hold it to a few seeds; niger, sesame or hemp seed serve as well.',
  },
  cottonseed: {
    title: 'Cottonseed',
    reason:
      'Cottonseed and its meal hold gossypol, which builds up and harms heart, liver and fertility; animals with a single stomach bear least.',
    way: 'Use sunflower or pumpkin seed.',
  },
  ginkgo: {
    title: 'Ginkgo nuts and leaves',
    reason:
      'Ginkgo seeds hold a poison that works against vitamin B6 and brings on fits; ten can be too many for a person, and cooking takes out only a part.',
    way: 'Use hazelnut or walnut; of leaves, hazel or apple.',
  },
  'seed-for-sowing': {
    title: 'Seed sold for sowing',
    reason:
      'Seed for sowing may be dressed with fungicides and insecticides; US law has such seed dyed and marked as no food or feed, but seed that is loose or refilled tells nothing.',
    way: 'Buy seed sold as food or feed, and never feed what is left of a sowing.',
  },
  'potato-raw': {
    title: 'Raw potato: boil it, never green or sprouting',
    reason:
      'Raw potato holds solanine and chaconine, most in green skin and sprouts; boiling and peeling take out part. For pets no safe amount could be worked out.',
    way: 'Peel, cut out eyes and green parts, boil, and throw the water away.',
  },
  'nightshade-green': {
    title: 'Green parts of potato, tomato and aubergine',
    reason:
      'Leaves, stalks, sprouts and green fruit of the nightshade family hold glycoalkaloids that harm gut and nerves.',
    way: 'Feed only ripe tomato flesh and boiled, peeled potato.',
  },
  'aubergine-raw': {
    title: 'Aubergine',
    reason: 'Aubergine holds glycoalkaloids, more when unripe; how much a hamster can take is not known.',
    way: 'Leave it out, or feed a crumb of ripe, cooked flesh.',
  },
  rhubarb: {
    title: 'Rhubarb',
    reason: 'Rhubarb is among the foods highest in oxalate, and its leaves are poisonous.',
    way: 'Leave out stalk, leaf and root.',
  },
  'high-oxalate-leaves': {
    title: 'Spinach, chard, beet leaves, sorrel',
    reason:
      'These leaves are high in oxalate, which binds calcium and can leave crystals in the urine; the evidence is from people.',
    way: 'Choose low-oxalate leaves such as romaine, dandelion or pak choi; boiling and draining takes out part.',
  },
  'purslane-oxalate': {
    title: 'Purslane',
    reason:
      'Purslane is high in oxalate, which binds calcium; a little is fed often and no harm in hamsters was found in print.',
    way: 'Give a sprig now and then beside the mix.',
  },
  parsley: {
    title: 'Parsley',
    reason:
      'Parsley is high in calcium and fairly high in oxalate, so keepers give it in pinches; seeds and leaves also hold myristicin.',
    way: 'A pinch of dried parsley in the mix is enough.',
  },
  'sugary-dried-fruit': {
    title: 'Sugary dried fruit',
    reason:
      'Dried fruit is half to four fifths sugar. Golden hamsters on a very high fructose diet (60 %) became glucose intolerant; what a few raisins do is not known.',
    way: 'Use freeze-dried vegetables or rose hip for colour; keep dried fruit as a rare treat.',
  },
  'dwarf-sugary-dried-fruit': {
    title: 'Sugary dried fruit for dwarf hamsters and animals prone to diabetes',
    reason:
      "Campbell's dwarf hamsters and their hybrids are prone to diabetes, and keepers hold sugar as low as they can for all dwarf hamsters. The evidence is keepers' and vets' experience, not trials.",
    way: 'Leave dried fruit out of the mix of such an animal.',
  },
  'dwarf-sweet-fruit': {
    title: 'Sweet fruit and sweetcorn for dwarf hamsters and animals prone to diabetes',
    reason:
      'Dwarf hamsters are prone to diabetes, so keepers give sweet fruit, carob and sweetcorn sparingly or not at all. The evidence is experience, not trials.',
    way: 'Give vegetables and leaves instead.',
  },
  grape: {
    title: 'Grapes',
    reason:
      "Grapes and raisins can fail a dog's kidneys; no such case in a hamster was found in print, but they are also very sweet.",
    way: 'Give a slice now and then at most, never in the mix.',
  },
  'added-sugar': {
    title: 'Sugar, honey and syrup',
    reason:
      'Sugar, honey, syrup and molasses add sugar and nothing a hamster needs, and they stick to the pouches. Golden hamsters on a 60 % fructose diet became glucose intolerant.',
    way: 'Leave them out; there is no sweetening in a sound mix.',
  },
  'nut-butter': {
    title: 'Nut butters and other sticky pastes',
    reason: 'Sticky food cakes in the cheek pouches; it cannot be pushed out and goes bad there.',
    way: 'Use whole or chopped dry nuts instead.',
  },
  'sticky-when-soft': {
    title: 'Soft dried fruit: dry it crisp',
    reason: 'Soft, sticky dried fruit cakes in the cheek pouches.',
    way: 'Cut it to crumbs and dry it until it snaps, or leave it out.',
  },
  sulphured: {
    title: 'Sulphured dried fruit',
    reason:
      'Sulphur dioxide and sulphites keep dried fruit bright and destroy vitamin B1; dogs and cats on sulphited meat fell ill for want of it.',
    way: 'Buy unsulphured fruit, brown rather than bright, or dry your own.',
  },
  'quinoa-unwashed': {
    title: 'Quinoa: wash it',
    reason:
      'The coat of quinoa holds bitter saponins that harm the lining of the gut; rats ate unwashed quinoa badly and grew little on it, and well on washed.',
    way: 'Rinse it until the water no longer foams and dry it again, or buy it washed or polished.',
  },
  awns: {
    title: 'Sharp awns and spikelets: take them off',
    reason:
      'Awns of barley, foxtail grass and bristly oat spikelets can pierce the lining of the cheek pouches.',
    way: 'Buy awnless grain, or rub the awns off and sieve; pick ears over by hand.',
  },
  chilli: {
    title: 'Chillies',
    reason:
      'Capsaicin burns mouth and gut, and whole dried chillies are sharp in the pouches; a hamster cannot tell you so in time.',
    way: 'Use sweet pepper, dried or fresh.',
  },
  'salted-or-oil-roasted': {
    title: 'Salted, fried or oil-roasted food',
    reason:
      'Salt and frying oil push sodium and fat far over what a hamster needs; the mouse needs about half a gram of sodium in a kilogram of feed.',
    way: 'Buy raw or dry-roasted, unsalted seeds and nuts.',
  },
  'peanut-raw': {
    title: 'Peanuts',
    reason:
      'Peanuts are the nut most often spoilt by aflatoxin, a mould poison that harms the liver; good ones hold a few micrograms in a kilogram, bad ones over a thousand. They are rich in fat besides.',
    way: 'Buy peanuts sold as food for people, fresh and unsalted; throw away any that are shrivelled, discoloured or musty.',
  },
  macadamia: {
    title: 'Macadamia nuts',
    reason:
      'Macadamia nuts make dogs weak and unsteady; no other animal is on record, and their fat is the highest of all nuts.',
    way: 'Use hazelnut or walnut.',
  },
  nutmeg: {
    title: 'Nutmeg and mace',
    reason:
      'Nutmeg given daily for one or two weeks damaged the livers of mice; in people a few grams are enough for poisoning.',
    way: 'Leave it out of every food that is shared.',
  },
  'cassava-raw': {
    title: 'Raw cassava',
    reason: 'Cassava root and leaf release cyanide unless peeled, soaked, grated or boiled with care.',
    way: 'Use sweet potato.',
  },
  'taro-raw': {
    title: 'Raw taro and its kin',
    reason:
      'Raw taro and its leaves are full of needles of calcium oxalate that stab mouth and throat until they are boiled well.',
    way: 'Use sweet potato, or taro boiled until quite soft.',
  },
  kelp: {
    title: 'Kelp and other brown seaweed',
    reason:
      'Dried kelp holds 1,500 to 8,000 mg of iodine in a kilogram, rockweed 500 to 1,000 mg, and it varies from pack to pack, where the mouse needs 0.15 mg; too much upsets the thyroid as too little does.',
    way: 'The pellet carries iodine; for colour and minerals use nettle or dandelion leaf.',
  },
  tobacco: {
    title: 'Tobacco',
    reason:
      'Nicotine, in leaf, stub, gum or liquid, overruns the nerves and stops the breath; a crumb is much for a hamster.',
    way: 'Keep it out of the room; for dry leaf use hazel, blackberry or nettle.',
  },
  hops: {
    title: 'Hops',
    reason:
      'Dogs that ate hops, fresh or spent, ran a fever above 40 °C and some died within hours; the poison is not known, nor what a hamster bears.',
    way: 'Use chamomile or lemon balm where a scented herb is wanted.',
  },
  cannabis: {
    title: 'Cannabis',
    reason:
      'Flower, leaf and resin of drug hemp act on heart, nerves and body heat; butter and sweets made with it have killed dogs. Hemp seed is food and is not meant.',
    way: 'Hemp seed is fit to feed; leaf and flower of any hemp stay out.',
  },
  'essential-oil': {
    title: 'Essential oils',
    reason:
      'An essential oil is a plant a hundred times over: drops of tea tree, eucalyptus or thyme oil harm liver and airways of small animals.',
    way: 'Use the dried herb itself.',
  },
  'ornamental-gourd': {
    title: 'Ornamental and bitter gourds',
    reason:
      'Ornamental gourds, and courgettes or squash that taste bitter, hold cucurbitacins, which tear at the gut and are not lost in cooking or drying.',
    way: 'Use squash and courgette sold as food, and taste a bit of home-grown ones: what is bitter is thrown away.',
  },
  'wild-mushroom': {
    title: 'Wild mushrooms',
    reason: 'Some wild mushrooms kill in traces and are easily mistaken, fresh or dried.',
    way: 'Leave gathered mushrooms out; bought ones, of cultivation, are another matter.',
  },
  mushroom: {
    title: 'Cultivated mushrooms',
    reason:
      'Button, oyster and shiitake mushrooms bought as food are not poisonous; raw button mushrooms hold agaritine, which heat and drying lower, and none brings a hamster much.',
    way: 'Feed a bought one now and then, cooked or dried crisp; never a gathered one.',
  },
  bracken: {
    title: 'Bracken',
    reason:
      'Bracken poisons animals that eat it over weeks, and gave rats and guinea pigs tumours of gut and bladder in feeding trials.',
    way: GATHER,
  },
  ivy: {
    title: 'Ivy',
    reason: 'Leaves and berries of ivy hold saponins that burn mouth and gut.',
    way: GATHER,
  },
  'true-lilies': {
    title: 'Lilies and lily of the valley',
    reason:
      "Lily of the valley holds heart poisons; true lilies fail a cat's kidneys. Neither has a use in feed.",
    way: GATHER,
  },
  yew: {
    title: 'Yew',
    reason: 'All parts of yew but the red flesh stop the heart; a few needles kill small animals.',
    way: GATHER,
  },
  buttercup: {
    title: 'Buttercup',
    reason: 'Fresh buttercup burns mouth and gut; the poison is lost in dry hay.',
    way: GATHER,
  },
  hellebore: {
    title: 'Hellebore (Christmas rose)',
    reason: 'Hellebore holds heart poisons and burning sap in every part, also dried.',
    way: GATHER,
  },
  clematis: {
    title: 'Clematis',
    reason: 'Clematis, wild or of the garden, burns mouth and gut as buttercup does.',
    way: GATHER,
  },
  celandine: {
    title: 'Greater celandine',
    reason: 'The orange sap of greater celandine holds alkaloids that burn and harm the liver.',
    way: GATHER,
  },
  cyclamen: {
    title: 'Cyclamen',
    reason: 'Cyclamen, its tuber above all, holds saponins that tear at the gut and upset the heart.',
    way: GATHER,
  },
  'arum-family': {
    title: 'Arum, calla and the leafy house plants of their family',
    reason:
      'Arum, dieffenbachia, philodendron and their kin are full of needles of calcium oxalate that stab mouth and throat; the red berries of arum look like food.',
    way: GATHER,
  },
  hydrangea: {
    title: 'Hydrangea',
    reason:
      'Leaves, buds and flowers of hydrangea hold glycosides that can give off cyanide and upset the gut.',
    way: GATHER,
  },
  wisteria: {
    title: 'Wisteria',
    reason:
      'Seeds and pods of wisteria hold a lectin and a glycoside that bring on heavy gut upset; two seeds have made children ill.',
    way: GATHER,
  },
  'morning-glory': {
    title: 'Morning glory and bindweed',
    reason:
      'Seeds of morning glory hold alkaloids like those of ergot; bindweed holds others that upset gut and nerves.',
    way: GATHER,
  },
  tansy: {
    title: 'Tansy, wormwood, rue, pennyroyal',
    reason:
      'Tansy and wormwood hold thujone, which brings on fits; rue burns in sunlight and pennyroyal ruins the liver.',
    way: 'Use oregano, thyme or peppermint.',
  },
  sycamore: {
    title: 'Sycamore and box elder',
    reason:
      'Winged seeds, seedlings and leaves of sycamore and box elder hold hypoglycin A, which destroys muscle; horses die of it.',
    way: 'Give twigs and leaves of apple, hazel or willow.',
  },
  'house-plants': {
    title: 'Sago palm, kalanchoe, lantana, aloe',
    reason:
      'Sago palm ruins the liver, kalanchoe stops the heart, lantana and the sap of aloe harm liver and gut.',
    way: GATHER,
  },
  foxglove: {
    title: 'Foxglove',
    reason:
      'Foxglove holds digitalis, which stops the heart; its young leaves look like comfrey and mullein.',
    way: GATHER,
  },
  oleander: {
    title: 'Oleander',
    reason: 'Oleander holds heart poisons in every part, also dried.',
    way: GATHER,
  },
  hemlock: {
    title: 'Hemlock, its look-alikes, cow parsley',
    reason:
      'Poison hemlock, water hemlock and fool’s parsley kill by paralysing the breath. Cow parsley is harmless itself, but few tell it from them for certain.',
    way: GATHER,
  },
  ragwort: {
    title: 'Ragwort and groundsel',
    reason: 'Ragwort and groundsel hold pyrrolizidine alkaloids that ruin the liver, also in hay.',
    way: GATHER,
  },
  comfrey: {
    title: 'Comfrey, borage, coltsfoot, butterbur',
    reason:
      'Comfrey, coltsfoot and butterbur, and borage in smaller measure, hold pyrrolizidine alkaloids that harm the liver over time.',
    way: GATHER,
  },
  'deadly-nightshade': {
    title: 'Deadly nightshade, thorn apple, bittersweet',
    reason: 'These hold atropine and its kin or solanine; berries and leaves poison in small amounts.',
    way: GATHER,
  },
  'autumn-crocus': {
    title: 'Autumn crocus (meadow saffron)',
    reason: 'Its leaves look like wild garlic and hold colchicine, which kills slowly, also in hay.',
    way: GATHER,
  },
  monkshood: {
    title: 'Monkshood and larkspur',
    reason: 'Aconite stops heart and breath in traces.',
    way: GATHER,
  },
  laburnum: {
    title: 'Laburnum, robinia, broom',
    reason: 'Laburnum and broom poison by alkaloids, false acacia by lectins, in bark, leaf and seed.',
    way: GATHER,
  },
  rhododendron: {
    title: 'Rhododendron and azalea',
    reason: 'Leaves and nectar of rhododendron upset gut, heart and nerves.',
    way: GATHER,
  },
  'spring-bulbs': {
    title: 'Daffodil, hyacinth, tulip, snowdrop, amaryllis',
    reason: 'Bulbs and leaves of spring flowers hold alkaloids that upset gut and heart.',
    way: GATHER,
  },
  'cherry-laurel': {
    title: 'Cherry laurel, box, privet, holly, mistletoe, castor, jequirity',
    reason:
      'These hedge and garden plants and their seeds hold cyanide, alkaloids or lectins and poison small animals; of castor and jequirity one seed is enough.',
    way: GATHER,
  },
  'st-johns-wort': {
    title: 'St John’s wort',
    reason:
      'St John’s wort makes the skin of grazing animals burn in sunlight and changes how medicines work.',
    way: 'Use chamomile or lemon balm.',
  },
  'sweet-clover': {
    title: 'Sweet clover: sound and dry only',
    reason:
      'Sweet clover is harmless fresh or well dried; mould turns its coumarin into dicoumarol, which stops blood from clotting.',
    way: 'Dry it fast and crisp, throw away what smells musty, and use red clover for the rest.',
  },
  conifer: {
    title: 'Eucalyptus, pine, cedar',
    reason: 'Resins and oils of eucalyptus, pine and cedar irritate airways and load the liver.',
    way: 'Use twigs of apple, hazel or willow instead.',
  },
  'cabbage-family': {
    title: 'Cabbage family in quantity',
    reason:
      'Cabbage, cauliflower, broccoli and sprouts ferment in the gut; hamsters cannot bring up gas. How much is too much was not tested.',
    way: 'Give little, mixed with other vegetables, and watch the droppings.',
  },
  iceberg: {
    title: 'Iceberg lettuce',
    reason: 'Almost all water, little else; much of it loosens the droppings.',
    way: 'Give romaine, dandelion or endive beside the mix.',
  },
  'dog-or-cat-food': {
    title: 'Dog or cat food',
    reason:
      'Made for other needs: often fatty, salted, seasoned with garlic, or far richer in vitamins A and D.',
    way: 'Use dried insects, egg or cooked chicken for animal protein.',
  },
  'medicated-feed': {
    title: 'Medicated feed, chick crumbs, antibiotics',
    reason:
      'Ampicillin, erythromycin, clindamycin, cephalosporins and gentamicin by mouth killed most hamsters that got them, by the germs they let grow in the gut. Chick crumbs and other farm feeds may hold coccidiostats, which harm heart and muscle of animals they are not meant for.',
    way: 'Buy feed without medicines, and give a medicine only as a vet who knows hamsters says.',
  },
  'milk-lactose': {
    title: 'Milk and other dairy with lactose',
    reason:
      'Grown mammals digest lactose poorly, so milk loosens the droppings; plain yogurt and low-fat curd hold less or bring their own enzymes.',
    way: 'Use a little plain yogurt or fat-free cottage cheese, fresh, beside the mix.',
  },
  'raw-meat': {
    title: 'Raw meat and raw fish',
    reason: 'Raw meat and fish carry germs and spoil within hours in a hoard.',
    way: 'Cook it plain, without salt or fat, dry it or feed it fresh and take leftovers out the same day.',
  },
  'raw-egg': {
    title: 'Raw egg: boil it',
    reason:
      'Raw egg white binds biotin, so that rats fed much of it fell ill; cooked egg white mended them. Drying does not take that away, and raw egg may carry salmonella besides.',
    way: 'Boil the egg hard and dry the crumbs; dried egg and egg white have limits of their own.',
  },
  'dried-egg': {
    title: 'Dried whole egg: cooked is better',
    reason:
      'Drying and pasteurising leave the avidin of the egg white at work: chicks on 43 % of unheated dried whole egg lacked biotin, for the yolk brings too little to make up for it. What a small share does beside a pellet that holds biotin was not tried.',
    way: 'Boil eggs hard, crumble and dry them: that egg has no such limit.',
  },
  'dried-egg-white': {
    title: 'Dried egg white',
    reason:
      'Dried egg white holds its avidin, which binds biotin, and inhibitors that enlarge the pancreas; half an hour at 121 °C took most of both away, 80 °C did not.',
    way: 'Use hard-boiled egg, dried, or dried insects.',
  },
  'fish-liver-oil': {
    title: 'Fish-liver oil',
    reason:
      'Cod-liver oil holds 1,000,000 IU of vitamin A and 100,000 IU of vitamin D in a kilogram: one part in a hundred of a mix brings four times the vitamin A that a mouse needs and all of its vitamin D, on top of the pellet’s, and both build up.',
    way: 'The pellet carries vitamins A and D; for fat use a few seeds.',
  },
  'fish-oil': {
    title: 'Fish oil',
    reason:
      'Fish oil goes rancid within weeks once it is spread over dry food and uses up vitamin E; how much vitamin A and D an oil holds, only its label tells.',
    way: 'Give a little cooked fish or a few hemp seeds instead.',
  },
  'organ-meat': {
    title: 'Liver, kidney and other organ meat',
    reason:
      'A kilogram of beef liver holds 170,000 IU of vitamin A fresh and well over 500,000 dried; at 1 % of the mix dried liver alone brings more than the 2,400 IU that a mouse needs in a kilogram, and vitamin A builds up.',
    way: 'Use cooked muscle meat, egg or dried insects.',
  },
  'cooked-bones': {
    title: 'Cooked bones',
    reason:
      'Cooked bones, of poultry above all, break into sharp splinters that pierce mouth, pouch and gut.',
    way: 'Take every bone out of cooked meat and fish; for gnawing give twigs of apple or hazel.',
  },
  'wild-caught-insects': {
    title: 'Insects caught outdoors',
    reason:
      'Insects from garden or field may carry sprays, slug bait and worms, and some are poisonous themselves; dead ones off a windowsill mostly died of spray.',
    way: 'Buy insects bred as feed, dried or live.',
  },
  'people-supplements': {
    title: 'Vitamin pills and drops for people',
    reason:
      'One tablet holds the vitamins of a person of 70 kg; in the bowl of an animal of 100 g it is hundreds of days of vitamins A and D at once.',
    way: 'The pellet carries the vitamins; what is missing is for a vet to dose.',
  },
  'processed-meat': {
    title: 'Salty processed meat',
    reason: 'Sausage, ham and bacon are salted, cured with nitrite, fatty and often seasoned with garlic.',
    way: 'Use plain cooked chicken or dried insects.',
  },
  'bread-pastry': {
    title: 'Bread, cake and biscuits',
    reason: 'Bread and pastry bring salt, sugar and fat; soft bread goes sour in the hoard.',
    way: 'Use plain grain, or a crumb of dry unsalted crispbread.',
  },
  'raw-dough': {
    title: 'Raw dough',
    reason:
      'Dough with live yeast rises on in the warm stomach: the gas stretches it and the alcohol poisons. Any animal can be harmed; most cases on record are dogs.',
    way: 'Let no dough near the cage; plain grain flakes do as well.',
  },
  'live-yeast': {
    title: 'Live yeast',
    reason: 'Baking yeast is alive and goes on fermenting in the gut, with gas and alcohol.',
    way: 'Use dried brewer’s yeast or yeast flakes, which are dead.',
  },
  leavening: {
    title: 'Baking powder and baking soda',
    reason:
      'Leavening gives off gas in the stomach, which a hamster cannot bring up, and is mostly sodium: baking soda holds 27 g in 100 g.',
    way: 'Leave it out; nothing in a mix needs to rise.',
  },
  xylitol: {
    title: 'Xylitol and sugar-free sweets',
    reason:
      "Xylitol drops a dog's blood sugar and harms its liver within hours; rodents seem to bear it better, but it has no place in feed.",
    way: 'Leave sweets and chewing gum out.',
  },
  sweets: {
    title: 'Sweets',
    reason: 'Sugar, dye and stickiness in one: sweets cake in the pouches and feed no hamster.',
    way: 'Use a single seed or a dried insect as a treat.',
  },
  mouldy: {
    title: 'Mouldy, musty or infested goods',
    reason:
      'Mould poisons survive drying and baking and harm the liver in traces; insects bring droppings and more mould.',
    way: 'Throw the whole pack away, wipe the box out, and freeze new dry goods on arrival.',
  },
  ergot: {
    title: 'Ergot',
    reason:
      'Ergot is the dark, horn-like body of a fungus that takes the place of a kernel in the ear; its alkaloids close the blood vessels and even small amounts in feed hold growth back.',
    way: 'Throw the whole pack away; picked-out grain keeps the broken bits and the dust.',
  },
  'ergot-in-grain': {
    title: 'Rye, triticale and wheat in the grain: look for ergot',
    reason:
      'Rye and triticale most often, wheat at times, carry ergot, a dark body longer than the kernel and poisonous in small amounts. Grain cleaned for food holds hardly any; grain from the field or sold as feed may.',
    way: 'Buy grain cleaned for food and spread it out: at the first dark, horn-like body do not use the pack.',
  },
  'cooked-with-salt': {
    title: 'Food cooked or packed with salt',
    reason:
      'Salt from the pan or the brine stays in the food; the mouse needs about half a gram of sodium in a kilogram of feed.',
    way: 'Cook it plain yourself, or rinse it well.',
  },
  salt: {
    title: 'Salt',
    reason:
      'Pellet and plain foods already hold the sodium that a hamster needs; half a gram in a kilogram of feed does for the mouse, and a gram of salt brings 0.4 g. The limit lets pass what a bought food may hold of it and nothing that is added.',
    way: 'Leave salt out of the mix; fresh water stands there always.',
  },
  'salt-lick': {
    title: 'Salt licks and mineral stones',
    reason:
      'A lick tempts an animal of 100 g to many times the sodium that it needs in a day; the pellet holds enough.',
    way: 'Give twigs of apple or hazel to gnaw.',
  },
  'sun-dried-tomato': {
    title: 'Sun-dried tomato: mostly salted',
    reason:
      'Sun-dried tomatoes are mostly salted before they dry, or lie in oil; the row in the table (107 mg of sodium in 100 g) is of unsalted ones, and salted ones can hold twenty times as much.',
    way: 'Dry ripe tomatoes yourself without salt, or buy them with no salt on the label and enter that label.',
  },
  'elderberry-raw': {
    title: 'Raw elderberries and elder leaf',
    reason:
      'Raw elderberries, leaves and bark hold cyanogenic glycosides and upset the gut; ripe cooked berries do not.',
    way: 'Use rose hip or blackberry.',
  },
  'star-fruit': {
    title: 'Star fruit',
    reason:
      'Star fruit is very high in oxalate and holds a nerve poison that has killed people with weak kidneys; nothing is known for hamsters.',
    way: 'Use another fruit.',
  },
  'acorn-and-horse-chestnut': {
    title: 'Horse chestnuts and acorns',
    reason:
      'Horse chestnuts are poisonous and acorns are rich in tannin; sweet chestnuts are another nut and are food.',
    way: 'Use sweet chestnuts bought as food; leave horse chestnuts and acorns.',
  },
  'beech-mast': {
    title: 'Raw beech mast',
    reason:
      'Raw beech nuts hold oxalic acid and a bitter poison, fagin, that has made people, horses and cattle ill; roasting takes most of it away.',
    way: 'Roast and shell them and give a bit now and then, or use hazelnut.',
  },
};

export type CautionTexts = typeof CAUTION_TEXTS;
