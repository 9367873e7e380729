/** What the caution list says to a keeper, by the id of the caution in German. Sources stand beside the list itself. */
import type { CautionTexts } from '../en/caution-texts.ts';

const GATHER =
  'Nur Pflanzen sammeln, die du sicher kennst, abseits von Straßen und gespritzten Feldern; im Zweifel stehen lassen.';

export const CAUTION_TEXTS: CautionTexts = {
  'raw-kidney-type-beans': {
    title: 'Rohe Kidneybohnen und verwandte Bohnen',
    reason:
      'Getrocknete Kidney-, Weiße, Pinto-, Lima- und andere Gartenbohnen enthalten Lektine, die den Darm angreifen; rohe Kidneybohnen haben in Fütterungsversuchen Ratten getötet. Zu Hamstern wurde nichts gefunden, ihr Darm ähnelt aber dem der Ratte.',
    way: 'Nie roh in eine Mischung geben: über Nacht einweichen, Wasser wegschütten, 30 Minuten sprudelnd kochen, dann trocknen, und die Zeile der gekochten Bohne nehmen.',
  },
  'kidney-type-beans': {
    title: 'Kidneybohnen und verwandte: kochen',
    reason:
      'Getrocknete Kidney-, Weiße, Pinto-, Lima- und andere Gartenbohnen schaden roh und sind gekocht gutes Futter; langsames Erwärmen genügt nicht.',
    way: 'Mindestens 5 Stunden einweichen, Wasser wegschütten, 30 Minuten sprudelnd kochen, dann trocknen.',
  },
  'soya-raw': {
    title: 'Rohe Sojabohnen: erhitzen',
    reason:
      'Junge Goldhamster, die 32 Tage rohes Sojamehl bekamen, wuchsen viel schlechter als die mit erhitztem Mehl, und ihre Bauchspeicheldrüse war vergrößert: Die Trypsinhemmer stören die Eiweißverdauung. In einem längeren Versuch über 15 Monate war sie nicht vergrößert.',
    way: 'Durchkochen oder trocken rösten, oder getoastete Sojaflocken kaufen.',
  },
  'raw-soya-beans': {
    title: 'Rohe Sojabohnen',
    reason:
      'Junge Goldhamster mit rohem Sojamehl wuchsen weit schlechter als die mit erhitztem Mehl, und ihre Bauchspeicheldrüse war vergrößert.',
    way: 'Nie roh in eine Mischung geben: durchkochen oder trocken rösten, oder getoastetes Soja kaufen.',
  },
  'low-lectin-pulses-raw': {
    title: 'Rohe Linsen, Erbsen, Kichererbsen, Mungbohnen: höchstens ein Fünftel',
    reason:
      'Ihre Lektine schadeten Ratten nicht, roh behalten sie aber etwas Trypsinhemmer, und Ratten verdauten rohe Kichererbsen schlechter als gekochte. Ferkel wuchsen mit bis zu 22 % Linsen oder 36 % rohen Erbsen im ganzen Futter ebenso gut, mit 30 % Linsen schlechter; zu Hamstern wurde nichts gefunden.',
    way: 'Alle rohen Hülsenfrüchte zusammen auf ein Fünftel der Mischung begrenzen; mehr davon nur geflockt, geröstet, gekeimt oder gekocht und getrocknet.',
  },
  'broad-bean-raw': {
    title: 'Rohe Ackerbohnen: wenig, besser gekocht',
    reason:
      'Ackerbohnen (Dicke Bohnen) enthalten Vicin und Convicin, die bei empfindlichen Menschen rote Blutkörperchen zerstören können; ob Hamster empfindlich sind, ist nicht bekannt. Ratten mit rohen wuchsen 28 Tage wie mit erhitzten, nutzten das Protein aber schlechter.',
    way: 'Rohe oder geflockte auf 5 % der Mischung begrenzen, oder kochen, enthäuten und getrocknet füttern.',
  },
  'lupin-raw': {
    title: 'Rohe Lupinensamen',
    reason:
      'Bitterlupinen enthalten Alkaloide, die auf Nerven und Herz wirken; Süßlupinen enthalten weniger. Für Heimtiere ließ sich keine sichere Menge errechnen.',
    way: 'Nur als Lebensmittel verkaufte Süßlupinen nehmen, in gewechseltem Wasser eingeweicht und gekocht; nie Gartenlupinen sammeln.',
  },
  'vetch-grass-pea': {
    title: 'Wicken und Platterbsen',
    reason:
      'Platterbsen (Lathyrus) enthalten eine Aminosäure, die Menschen und Tiere lähmt, wenn sie monatelang davon leben; Wickensamen enthalten andere, die den Nerven schaden. Beide kommen in Tauben- und Vogelmischungen vor.',
    way: 'Erbsen oder Linsen nehmen, und die runden dunklen Wickensamen aus Vogelmischungen lesen.',
  },
  'onion-family': {
    title: 'Zwiebelgewächse',
    reason:
      'Zwiebel, Knoblauch, Lauch, Schnittlauch und Schalotte zerstören bei Hunden, Katzen und Nutztieren rote Blutkörperchen, roh, gekocht oder als Pulver; Knoblauch wirkt drei- bis fünfmal so stark wie Zwiebel. Für Hamster gibt es keine Zahlen.',
    way: 'In jeder Form weglassen, auch als Würze in gekochtem Essen.',
  },
  citrus: {
    title: 'Zitrusfrüchte',
    reason:
      'Halter lassen Zitrusfrüchte weg, weil sie für Maul und Backentaschen zu sauer sind. Eine Untersuchung an Hamstern wurde nicht gefunden, das beruht also nur auf Gewohnheit.',
    way: 'Hagebutte oder schwarze Johannisbeere nehmen, wenn Vitamin C oder Farbe gewünscht ist.',
  },
  avocado: {
    title: 'Avocado',
    reason:
      'Fruchtfleisch, Blatt, Schale und Kern enthalten Persin, das Herzmuskel und Milchdrüse schädigt; Mäuse, Ratten und Meerschweinchen gehören zu den geschädigten Tieren.',
    way: 'Weglassen; für Fett lieber ein paar Saaten nehmen.',
  },
  chocolate: {
    title: 'Schokolade und Kakao',
    reason:
      'Kakao enthält Theobromin und Koffein, die das Herz rasen lassen; ein Hamster wiegt so wenig, dass schon ein Krümel zählt. Schokolade klebt außerdem in den Backentaschen.',
    way: 'Weglassen; Johannisbrotmehl hat die Farbe und kein Theobromin.',
  },
  caffeine: {
    title: 'Kaffee, Tee und Cola',
    reason:
      'Koffein lässt das Herz rasen und überreizt die Nerven, und ein Hamster wiegt so wenig, dass ein paar Blätter oder etwas Kaffeesatz zählen. Kräutertees ohne Teeblatt sind nicht gemeint.',
    way: 'Getrocknete Kräuter nehmen, die weder Tee noch Mate sind, etwa Pfefferminze.',
  },
  alcohol: {
    title: 'Alkohol',
    reason:
      'Alkohol schadet Gehirn und Leber, und ein Hamster wiegt so wenig, dass schon ein Schluck eine hohe Dosis ist.',
    way: 'Weglassen; Gekochtes muss ohne Alkohol gekocht sein.',
  },
  'stone-fruit-kernels': {
    title: 'Kerne und Steine von Steinobst',
    reason:
      'Die Kerne von Aprikose, Pfirsich, Pflaume und Kirsche setzen beim Kauen Blausäure frei; drei kleine Aprikosenkerne sind das Meiste, was ein erwachsener Mensch auf einmal sicher essen kann.',
    way: 'Nur das Fruchtfleisch ohne Stein füttern.',
  },
  'stone-fruit': {
    title: 'Steinobst: Stein herausnehmen',
    reason:
      'Das Fruchtfleisch darf in kleinen Stücken gefüttert werden; der Kern im Stein setzt beim Kauen Blausäure frei.',
    way: 'Obst entsteinen und die Steine dort wegwerfen, wo kein Tier sie findet.',
  },
  'apple-pips': {
    title: 'Apfel- und Birnenkerne: entkernen',
    reason:
      'Die Kerne enthalten etwas Amygdalin, das beim Kauen Blausäure freisetzt; ein paar schaden nach allem, was bekannt ist, nicht, lassen sich aber leicht herausschneiden.',
    way: 'Obst vor dem Schneiden oder Trocknen entkernen.',
  },
  'bitter-almond': {
    title: 'Bittermandeln',
    reason:
      'Bittermandeln enthalten weit mehr Amygdalin als die meisten essbaren Samen und setzen beim Kauen Blausäure frei.',
    way: 'Stattdessen Haselnuss oder Walnuss nehmen.',
  },
  almond: {
    title: 'Mandeln',
    reason:
      'Süße Mandeln sind als Futter harmlos, es kann aber eine bittere darunter sein, und eine Bittermandel ist für einen Hamster viel.',
    way: 'Stattdessen Haselnuss oder Walnuss nehmen, oder als süß verkaufte Mandeln in kleinen Stücken.',
  },
  linseed: {
    title: 'Leinsamen',
    reason:
      'Leinsamen enthält cyanogene Glykoside, die Blausäure abgeben, sobald der Samen zerdrückt oder gekaut wird: Das Futtermittelrecht erlaubt 250 mg Blausäure je Kilogramm Leinsamen, aber 50 mg je Kilogramm Alleinfutter; das Meiste in einer Probe waren 407 mg. Bei 5 % der Mischung bringt selbst diese Probe nur etwa 20 mg je Kilogramm, und auch das Fett bleibt niedrig.',
    way: 'Auf 5 % der Mischung begrenzen, ganz und frisch; Sesam, Hanf oder Kürbiskerne können den Rest übernehmen.',
  },
  'brazil-nut': {
    title: 'Paranüsse',
    reason:
      'Paranüsse enthalten im Mittel etwa 19 bis 49 mg Selen je Kilogramm, einzelne über 100 mg, während die Maus 0,15 mg braucht; an Ratten verfüttert schadete dieses Selen der Leber wie jedes andere.',
    way: 'Haselnuss oder Walnuss nehmen.',
  },
  'poppy-seed': {
    title: 'Mohnsamen',
    reason:
      'Saubere Mohnsamen enthalten keine Opiumalkaloide, Staub und Saft der Kapsel lassen aber Morphin darauf zurück, in manchen Packungen genug, um die für Menschen sichere Menge zu überschreiten.',
    way: 'Als Lebensmittel verkaufte Samen kaufen, waschen und trocknen, und nur eine Prise geben; Sesam oder Chia tun es auch.',
  },
  'poppy-heads': {
    title: 'Mohnkapseln und Mohnstroh',
    reason:
      'Kapsel und Stängel des Schlafmohns enthalten Morphin und Verwandtes; eine trockene Kapsel ist für ein so kleines Tier Gift.',
    way: 'Eine Hirseähre oder einen Sonnenblumenkopf zum Knabbern geben.',
  },
  'mustard-seed': {
    title: 'Senf',
    reason:
      'Senfsamen setzen, gekaut oder gemahlen und befeuchtet, Senföle frei, die in Maul und Darm brennen, und ihre Glucosinolate bremsen die Schilddrüse.',
    way: 'Weglassen, oder höchstens ein paar ganze Samen einer Vogelmischung durchgehen lassen; Sesam oder Ramtillsaat nehmen.',
  },
  rapeseed: {
    title: 'Raps',
    reason:
      'Raps enthält Glucosinolate, die gegen die Schilddrüse wirken und den Geschmack verderben, alte Sorten auch viel Erucasäure; für Öl gezüchtete Saat enthält von beidem weniger, der Packung sieht man das aber nicht an.',
    way: 'Auf ein paar Samen begrenzen; Ramtill-, Sesam- oder Hanfsaat tun es auch.',
  },
  cottonseed: {
    title: 'Baumwollsaat',
    reason:
      'Baumwollsaat und ihr Schrot enthalten Gossypol, das sich anreichert und Herz, Leber und Fruchtbarkeit schadet; Tiere mit einfachem Magen vertragen am wenigsten.',
    way: 'Sonnenblumen- oder Kürbiskerne nehmen.',
  },
  ginkgo: {
    title: 'Ginkgonüsse und -blätter',
    reason:
      'Ginkgosamen enthalten ein Gift, das gegen Vitamin B6 wirkt und Krämpfe auslöst; zehn können für einen Menschen zu viel sein, und Kochen nimmt nur einen Teil weg.',
    way: 'Haselnuss oder Walnuss nehmen; an Blättern Hasel oder Apfel.',
  },
  'seed-for-sowing': {
    title: 'Saatgut zum Aussäen',
    reason:
      'Saatgut kann mit Mitteln gegen Pilze und Insekten gebeizt sein; in den USA muss es gefärbt und als „kein Lebens- oder Futtermittel“ gekennzeichnet sein, lose oder umgefüllte Saat verrät aber nichts.',
    way: 'Als Lebens- oder Futtermittel verkaufte Saat kaufen, und nie Reste von Saatgut füttern.',
  },
  'potato-raw': {
    title: 'Rohe Kartoffel: kochen, nie grün oder keimend',
    reason:
      'Rohe Kartoffel enthält Solanin und Chaconin, am meisten in grüner Schale und Keimen; Kochen und Schälen nehmen einen Teil weg. Für Heimtiere ließ sich keine sichere Menge errechnen.',
    way: 'Schälen, Augen und grüne Stellen ausschneiden, kochen und das Wasser wegschütten.',
  },
  'nightshade-green': {
    title: 'Grünes von Kartoffel, Tomate und Aubergine',
    reason:
      'Blätter, Stängel, Keime und grüne Früchte der Nachtschattengewächse enthalten Glykoalkaloide, die Darm und Nerven schaden.',
    way: 'Nur reifes Tomatenfleisch und gekochte, geschälte Kartoffel füttern.',
  },
  'aubergine-raw': {
    title: 'Aubergine',
    reason:
      'Aubergine enthält Glykoalkaloide, unreif mehr; wie viel ein Hamster verträgt, ist nicht bekannt.',
    way: 'Weglassen, oder einen Krümel reifes, gekochtes Fruchtfleisch geben.',
  },
  rhubarb: {
    title: 'Rhabarber',
    reason: 'Rhabarber gehört zu den Lebensmitteln mit der meisten Oxalsäure, und seine Blätter sind giftig.',
    way: 'Stiel, Blatt und Wurzel weglassen.',
  },
  'high-oxalate-leaves': {
    title: 'Spinat, Mangold, Rübenblätter, Sauerampfer',
    reason:
      'Diese Blätter sind reich an Oxalsäure, die Calcium bindet und Kristalle im Harn hinterlassen kann; die Belege stammen vom Menschen.',
    way: 'Blätter mit wenig Oxalsäure wählen, etwa Romanasalat, Löwenzahn oder Pak Choi; Kochen und Abgießen nimmt einen Teil weg.',
  },
  'purslane-oxalate': {
    title: 'Portulak',
    reason:
      'Portulak ist reich an Oxalsäure, die Calcium bindet; ein wenig davon wird oft gefüttert, und ein Schaden bei Hamstern wurde nirgends gefunden.',
    way: 'Ab und zu einen Zweig neben der Mischung geben.',
  },
  parsley: {
    title: 'Petersilie',
    reason:
      'Petersilie ist reich an Calcium und ziemlich reich an Oxalsäure, darum geben Halter sie prisenweise; Samen und Blätter enthalten auch Myristicin.',
    way: 'Eine Prise getrocknete Petersilie in der Mischung genügt.',
  },
  'sugary-dried-fruit': {
    title: 'Zuckerreiches Trockenobst',
    reason:
      'Trockenobst besteht zur Hälfte bis zu vier Fünfteln aus Zucker. Goldhamster mit sehr viel Fruchtzucker im Futter (60 %) vertrugen Zucker danach schlecht; was ein paar Rosinen tun, ist nicht bekannt.',
    way: 'Für Farbe gefriergetrocknetes Gemüse oder Hagebutte nehmen; Trockenobst nur als seltenes Leckerli.',
  },
  'dwarf-sugary-dried-fruit': {
    title: 'Zuckerreiches Trockenobst für Zwerghamster und Tiere, die zu Diabetes neigen',
    reason:
      'Campbell-Zwerghamster und ihre Hybriden neigen zu Diabetes, und Halter geben allen Zwerghamstern so wenig Zucker wie möglich. Das beruht auf der Erfahrung von Haltern und Tierärzten, nicht auf Versuchen.',
    way: 'Trockenobst aus der Mischung eines solchen Tiers weglassen.',
  },
  'dwarf-sweet-fruit': {
    title: 'Süßes Obst und Zuckermais für Zwerghamster und Tiere, die zu Diabetes neigen',
    reason:
      'Zwerghamster neigen zu Diabetes, darum geben Halter süßes Obst, Johannisbrot und Zuckermais sparsam oder gar nicht. Das beruht auf Erfahrung, nicht auf Versuchen.',
    way: 'Stattdessen Gemüse und Blätter geben.',
  },
  grape: {
    title: 'Trauben',
    reason:
      'Trauben und Rosinen können beim Hund die Nieren versagen lassen; von Hamstern ist kein solcher Fall veröffentlicht, sie sind aber auch sehr süß.',
    way: 'Höchstens ab und zu eine Scheibe geben, nie in der Mischung.',
  },
  'added-sugar': {
    title: 'Zucker, Honig und Sirup',
    reason:
      'Zucker, Honig, Sirup und Melasse bringen Zucker und nichts, was ein Hamster braucht, und kleben in den Backentaschen. Goldhamster mit 60 % Fruchtzucker im Futter vertrugen Zucker danach schlecht.',
    way: 'Weglassen; eine gute Mischung ist nicht gesüßt.',
  },
  'nut-butter': {
    title: 'Nussmus und andere klebrige Pasten',
    reason:
      'Klebriges setzt sich in den Backentaschen fest; es lässt sich nicht herausdrücken und verdirbt dort.',
    way: 'Stattdessen ganze oder gehackte trockene Nüsse nehmen.',
  },
  'sticky-when-soft': {
    title: 'Weiches Trockenobst: knusprig trocknen',
    reason: 'Weiches, klebriges Trockenobst setzt sich in den Backentaschen fest.',
    way: 'Klein schneiden und trocknen, bis es bricht, oder weglassen.',
  },
  sulphured: {
    title: 'Geschwefeltes Trockenobst',
    reason:
      'Schwefeldioxid und Sulfite halten Trockenobst hell und zerstören Vitamin B1; Hunde und Katzen mit sulfithaltigem Fleisch wurden krank, weil es fehlte.',
    way: 'Ungeschwefeltes Obst kaufen, eher braun als hell, oder selbst trocknen.',
  },
  'quinoa-unwashed': {
    title: 'Quinoa: waschen',
    reason:
      'Die Hülle von Quinoa enthält bittere Saponine, die der Darmschleimhaut schaden; Ratten fraßen ungewaschene Quinoa schlecht und wuchsen kaum, mit gewaschener gut.',
    way: 'Abspülen, bis das Wasser nicht mehr schäumt, und wieder trocknen, oder gewaschen oder geschliffen kaufen.',
  },
  awns: {
    title: 'Scharfe Grannen und Spelzen: entfernen',
    reason:
      'Grannen von Gerste und Borstenhirse und borstige Haferspelzen können die Haut der Backentaschen durchstechen.',
    way: 'Grannenloses Getreide kaufen, oder die Grannen abreiben und aussieben; Ähren von Hand durchsehen.',
  },
  chilli: {
    title: 'Chili',
    reason:
      'Capsaicin brennt in Maul und Darm, und ganze getrocknete Chilis sind scharfkantig in den Backentaschen; ein Hamster kann dir das nicht rechtzeitig sagen.',
    way: 'Süße Paprika nehmen, getrocknet oder frisch.',
  },
  'salted-or-oil-roasted': {
    title: 'Gesalzenes, Frittiertes, in Öl Geröstetes',
    reason:
      'Salz und Bratöl bringen Natrium und Fett weit über das, was ein Hamster braucht; die Maus braucht etwa ein halbes Gramm Natrium je Kilogramm Futter.',
    way: 'Rohe oder trocken geröstete, ungesalzene Saaten und Nüsse kaufen.',
  },
  'peanut-raw': {
    title: 'Erdnüsse',
    reason:
      'Erdnüsse sind die Nüsse, die am häufigsten Aflatoxin enthalten, ein Schimmelgift, das der Leber schadet; gute Ware enthält wenige Mikrogramm je Kilogramm, schlechte über tausend. Sie sind außerdem sehr fett.',
    way: 'Erdnüsse für Menschen kaufen, frisch und ungesalzen; geschrumpfte, verfärbte oder muffige wegwerfen.',
  },
  macadamia: {
    title: 'Macadamianüsse',
    reason:
      'Macadamianüsse machen Hunde schwach und wacklig; von anderen Tieren ist nichts bekannt, und sie sind die fettesten aller Nüsse.',
    way: 'Haselnuss oder Walnuss nehmen.',
  },
  nutmeg: {
    title: 'Muskatnuss und Macis',
    reason:
      'Muskat schädigte, ein bis zwei Wochen täglich gegeben, die Leber von Mäusen; beim Menschen genügen ein paar Gramm für eine Vergiftung.',
    way: 'Aus allem weglassen, was geteilt wird.',
  },
  'cassava-raw': {
    title: 'Roher Maniok',
    reason:
      'Wurzel und Blatt von Maniok setzen Blausäure frei, wenn sie nicht sorgfältig geschält, gewässert, gerieben oder gekocht sind.',
    way: 'Süßkartoffel nehmen.',
  },
  'taro-raw': {
    title: 'Roher Taro und Verwandte',
    reason:
      'Roher Taro und seine Blätter sind voller Nadeln aus Calciumoxalat, die in Maul und Rachen stechen, bis sie gut gekocht sind.',
    way: 'Süßkartoffel nehmen, oder ganz weich gekochten Taro.',
  },
  kelp: {
    title: 'Seetang und andere Braunalgen',
    reason:
      'Getrockneter Seetang enthält 1500 bis 8000 mg Jod je Kilogramm, Blasentang 500 bis 1000 mg, von Packung zu Packung verschieden, während die Maus 0,15 mg braucht; zu viel stört die Schilddrüse ebenso wie zu wenig.',
    way: 'Das Jod steckt in den Pellets; für Farbe und Mineralstoffe Brennnessel oder Löwenzahn nehmen.',
  },
  tobacco: {
    title: 'Tabak',
    reason:
      'Nikotin, ob aus Blatt, Stummel, Kaugummi oder Flüssigkeit, überreizt die Nerven und lähmt den Atem; ein Krümel ist viel für einen Hamster.',
    way: 'Aus dem Zimmer fernhalten; als trockenes Blatt Hasel, Brombeere oder Brennnessel nehmen.',
  },
  hops: {
    title: 'Hopfen',
    reason:
      'Hunde, die Hopfen fraßen, frisch oder ausgekocht, bekamen über 40 °C Fieber, und einige starben innerhalb von Stunden; das Gift ist nicht bekannt, auch nicht, was ein Hamster verträgt.',
    way: 'Kamille oder Zitronenmelisse nehmen, wenn ein duftendes Kraut gewünscht ist.',
  },
  cannabis: {
    title: 'Cannabis',
    reason:
      'Blüte, Blatt und Harz von Drogenhanf wirken auf Herz, Nerven und Körperwärme; damit gemachte Butter und Süßigkeiten haben Hunde getötet. Hanfsamen sind Futter und nicht gemeint.',
    way: 'Hanfsamen dürfen gefüttert werden; Blatt und Blüte jedes Hanfs bleiben weg.',
  },
  'essential-oil': {
    title: 'Ätherische Öle',
    reason:
      'Ein ätherisches Öl ist die Pflanze in hundertfacher Stärke: Tropfen von Teebaum-, Eukalyptus- oder Thymianöl schaden Leber und Atemwegen kleiner Tiere.',
    way: 'Das getrocknete Kraut selbst nehmen.',
  },
  'ornamental-gourd': {
    title: 'Zierkürbis und bittere Kürbisse',
    reason:
      'Zierkürbisse, und Zucchini oder Kürbis, die bitter schmecken, enthalten Cucurbitacine, die den Darm angreifen und beim Kochen oder Trocknen bleiben.',
    way: 'Als Lebensmittel verkaufte Kürbisse und Zucchini nehmen, selbst gezogene erst kosten: Was bitter ist, wird weggeworfen.',
  },
  'wild-mushroom': {
    title: 'Wilde Pilze',
    reason: 'Manche wilden Pilze töten in Spuren und werden leicht verwechselt, frisch wie getrocknet.',
    way: 'Gesammelte Pilze weglassen; gekaufte Zuchtpilze sind etwas anderes.',
  },
  mushroom: {
    title: 'Zuchtpilze',
    reason:
      'Als Lebensmittel gekaufte Champignons, Austernpilze und Shiitake sind nicht giftig; rohe Champignons enthalten Agaritin, das Hitze und Trocknen mindern, und keiner bringt einem Hamster viel.',
    way: 'Ab und zu einen gekauften geben, gekocht oder knusprig getrocknet; nie einen gesammelten.',
  },
  bracken: {
    title: 'Adlerfarn',
    reason:
      'Adlerfarn vergiftet Tiere, die ihn wochenlang fressen, und Ratten und Meerschweinchen bekamen in Fütterungsversuchen Tumoren an Darm und Blase.',
    way: GATHER,
  },
  ivy: {
    title: 'Efeu',
    reason: 'Blätter und Beeren von Efeu enthalten Saponine, die in Maul und Darm brennen.',
    way: GATHER,
  },
  'true-lilies': {
    title: 'Lilien und Maiglöckchen',
    reason:
      'Maiglöckchen enthalten Herzgifte; echte Lilien lassen bei der Katze die Nieren versagen. Beides hat im Futter nichts zu suchen.',
    way: GATHER,
  },
  yew: {
    title: 'Eibe',
    reason:
      'Alle Teile der Eibe außer dem roten Fleisch bringen das Herz zum Stillstand; wenige Nadeln töten kleine Tiere.',
    way: GATHER,
  },
  buttercup: {
    title: 'Hahnenfuß',
    reason: 'Frischer Hahnenfuß brennt in Maul und Darm; in trockenem Heu ist das Gift weg.',
    way: GATHER,
  },
  hellebore: {
    title: 'Nieswurz (Christrose)',
    reason: 'Nieswurz enthält in allen Teilen Herzgifte und brennenden Saft, auch getrocknet.',
    way: GATHER,
  },
  clematis: {
    title: 'Waldrebe (Clematis)',
    reason: 'Clematis, wild oder aus dem Garten, brennt in Maul und Darm wie Hahnenfuß.',
    way: GATHER,
  },
  celandine: {
    title: 'Schöllkraut',
    reason: 'Der orange Saft des Schöllkrauts enthält Alkaloide, die brennen und der Leber schaden.',
    way: GATHER,
  },
  cyclamen: {
    title: 'Alpenveilchen',
    reason:
      'Alpenveilchen, vor allem die Knolle, enthalten Saponine, die den Darm angreifen und das Herz stören.',
    way: GATHER,
  },
  'arum-family': {
    title: 'Aronstab, Calla und die Zimmerpflanzen ihrer Familie',
    reason:
      'Aronstab, Dieffenbachie, Philodendron und Verwandte sind voller Nadeln aus Calciumoxalat, die in Maul und Rachen stechen; die roten Beeren des Aronstabs sehen nach Futter aus.',
    way: GATHER,
  },
  hydrangea: {
    title: 'Hortensie',
    reason:
      'Blätter, Knospen und Blüten der Hortensie enthalten Glykoside, die Blausäure abgeben können und den Darm stören.',
    way: GATHER,
  },
  wisteria: {
    title: 'Blauregen',
    reason:
      'Samen und Schoten des Blauregens enthalten ein Lektin und ein Glykosid, die den Darm schwer stören; zwei Samen haben Kinder krank gemacht.',
    way: GATHER,
  },
  'morning-glory': {
    title: 'Prunkwinde und Ackerwinde',
    reason:
      'Samen der Prunkwinde enthalten Alkaloide wie die des Mutterkorns; Winden enthalten andere, die Darm und Nerven stören.',
    way: GATHER,
  },
  tansy: {
    title: 'Rainfarn, Wermut, Raute, Poleiminze',
    reason:
      'Rainfarn und Wermut enthalten Thujon, das Krämpfe auslöst; Raute verbrennt die Haut in der Sonne, und Poleiminze zerstört die Leber.',
    way: 'Oregano, Thymian oder Pfefferminze nehmen.',
  },
  sycamore: {
    title: 'Bergahorn und Eschenahorn',
    reason:
      'Flügelsamen, Keimlinge und Blätter von Bergahorn und Eschenahorn enthalten Hypoglycin A, das Muskeln zerstört; Pferde sterben daran.',
    way: 'Zweige und Blätter von Apfel, Hasel oder Weide geben.',
  },
  'house-plants': {
    title: 'Palmfarn, Kalanchoe, Wandelröschen, Aloe',
    reason:
      'Palmfarn zerstört die Leber, Kalanchoe bringt das Herz zum Stillstand, Wandelröschen und der Saft der Aloe schaden Leber und Darm.',
    way: GATHER,
  },
  foxglove: {
    title: 'Fingerhut',
    reason:
      'Fingerhut enthält Digitalis, das das Herz zum Stillstand bringt; seine jungen Blätter sehen aus wie Beinwell und Königskerze.',
    way: GATHER,
  },
  oleander: {
    title: 'Oleander',
    reason: 'Oleander enthält in allen Teilen Herzgifte, auch getrocknet.',
    way: GATHER,
  },
  hemlock: {
    title: 'Schierling, seine Doppelgänger, Wiesenkerbel',
    reason:
      'Gefleckter Schierling, Wasserschierling und Hundspetersilie töten durch Atemlähmung. Wiesenkerbel selbst ist harmlos, aber kaum jemand unterscheidet ihn sicher.',
    way: GATHER,
  },
  ragwort: {
    title: 'Jakobs- und andere Greiskräuter',
    reason: 'Greiskräuter enthalten Pyrrolizidinalkaloide, die die Leber zerstören, auch im Heu.',
    way: GATHER,
  },
  comfrey: {
    title: 'Beinwell, Borretsch, Huflattich, Pestwurz',
    reason:
      'Beinwell, Huflattich und Pestwurz, in geringerem Maß auch Borretsch, enthalten Pyrrolizidinalkaloide, die der Leber mit der Zeit schaden.',
    way: GATHER,
  },
  'deadly-nightshade': {
    title: 'Tollkirsche, Stechapfel, Bittersüß',
    reason:
      'Sie enthalten Atropin und Verwandtes oder Solanin; Beeren und Blätter vergiften in kleinen Mengen.',
    way: GATHER,
  },
  'autumn-crocus': {
    title: 'Herbstzeitlose',
    reason: 'Ihre Blätter sehen aus wie Bärlauch und enthalten Colchicin, das langsam tötet, auch im Heu.',
    way: GATHER,
  },
  monkshood: {
    title: 'Eisenhut und Rittersporn',
    reason: 'Aconitin bringt in Spuren Herz und Atem zum Stillstand.',
    way: GATHER,
  },
  laburnum: {
    title: 'Goldregen, Robinie, Ginster',
    reason:
      'Goldregen und Ginster vergiften durch Alkaloide, die Robinie durch Lektine, in Rinde, Blatt und Samen.',
    way: GATHER,
  },
  rhododendron: {
    title: 'Rhododendron und Azalee',
    reason: 'Blätter und Nektar des Rhododendrons stören Darm, Herz und Nerven.',
    way: GATHER,
  },
  'spring-bulbs': {
    title: 'Narzisse, Hyazinthe, Tulpe, Schneeglöckchen, Amaryllis',
    reason: 'Zwiebeln und Blätter der Frühlingsblumen enthalten Alkaloide, die Darm und Herz stören.',
    way: GATHER,
  },
  'cherry-laurel': {
    title: 'Kirschlorbeer, Buchs, Liguster, Stechpalme, Mistel, Rizinus, Paternostererbse',
    reason:
      'Diese Hecken- und Gartenpflanzen und ihre Samen enthalten Blausäure, Alkaloide oder Lektine und vergiften kleine Tiere; von Rizinus und Paternostererbse genügt ein Samen.',
    way: GATHER,
  },
  'st-johns-wort': {
    title: 'Johanniskraut',
    reason:
      'Johanniskraut lässt die Haut von Weidetieren in der Sonne verbrennen und verändert die Wirkung von Arzneien.',
    way: 'Kamille oder Zitronenmelisse nehmen.',
  },
  'sweet-clover': {
    title: 'Steinklee: nur einwandfrei und trocken',
    reason:
      'Steinklee ist frisch oder gut getrocknet harmlos; Schimmel macht aus seinem Cumarin Dicumarol, das die Blutgerinnung hemmt.',
    way: 'Schnell und knusprig trocknen, wegwerfen, was muffig riecht, und sonst Rotklee nehmen.',
  },
  conifer: {
    title: 'Eukalyptus, Kiefer, Zeder',
    reason: 'Harze und Öle von Eukalyptus, Kiefer und Zeder reizen die Atemwege und belasten die Leber.',
    way: 'Stattdessen Zweige von Apfel, Hasel oder Weide nehmen.',
  },
  'cabbage-family': {
    title: 'Viel Kohl',
    reason:
      'Kohl, Blumenkohl, Brokkoli und Rosenkohl gären im Darm; Hamster können nicht aufstoßen. Wie viel zu viel ist, wurde nicht geprüft.',
    way: 'Wenig geben, mit anderem Gemüse gemischt, und auf den Kot achten.',
  },
  iceberg: {
    title: 'Eisbergsalat',
    reason: 'Fast nur Wasser, sonst wenig; viel davon macht den Kot weich.',
    way: 'Romanasalat, Löwenzahn oder Endivie neben der Mischung geben.',
  },
  'dog-or-cat-food': {
    title: 'Hunde- oder Katzenfutter',
    reason:
      'Für anderen Bedarf gemacht: oft fett, gesalzen, mit Knoblauch gewürzt oder viel reicher an den Vitaminen A und D.',
    way: 'Getrocknete Insekten, Ei oder gekochtes Huhn als tierisches Protein nehmen.',
  },
  'medicated-feed': {
    title: 'Futter mit Arznei, Kükenfutter, Antibiotika',
    reason:
      'Ampicillin, Erythromycin, Clindamycin, Cephalosporine und Gentamicin töteten, ins Maul gegeben, die meisten Hamster durch die Keime, die sie im Darm wachsen lassen. Kükenfutter und anderes Nutztierfutter kann Kokzidiostatika enthalten, die Herz und Muskeln von Tieren schaden, für die es nicht gedacht ist.',
    way: 'Futter ohne Arznei kaufen, und Arznei nur nach Anweisung einer Tierarztpraxis geben, die Hamster kennt.',
  },
  'milk-lactose': {
    title: 'Milch und Milchprodukte mit Milchzucker',
    reason:
      'Erwachsene Säugetiere verdauen Milchzucker schlecht, darum macht Milch den Kot weich; Naturjoghurt und Magerquark enthalten weniger oder bringen eigene Enzyme mit.',
    way: 'Ein wenig Naturjoghurt oder fettfreien Hüttenkäse frisch neben der Mischung geben.',
  },
  'raw-meat': {
    title: 'Rohes Fleisch und roher Fisch',
    reason: 'Rohes Fleisch und roher Fisch tragen Keime und verderben im Vorratsnest innerhalb von Stunden.',
    way: 'Schlicht kochen, ohne Salz und Fett, trocknen oder frisch füttern und Reste am selben Tag entfernen.',
  },
  'raw-egg': {
    title: 'Rohes Ei: kochen',
    reason:
      'Rohes Eiklar bindet Biotin, sodass Ratten mit viel davon krank wurden; gekochtes Eiklar heilte sie. Trocknen nimmt das nicht weg, und rohes Ei kann außerdem Salmonellen tragen.',
    way: 'Das Ei hart kochen und die Krümel trocknen; für Trockenei und Trockeneiklar gelten eigene Grenzen.',
  },
  'dried-egg': {
    title: 'Trockenei: gekochtes ist besser',
    reason:
      'Trocknen und Pasteurisieren lassen das Avidin des Eiklars wirksam: Küken mit 43 % unerhitztem Volleipulver fehlte Biotin, denn der Dotter bringt zu wenig, um das auszugleichen. Was ein kleiner Anteil neben Pellets mit Biotin tut, wurde nicht geprüft.',
    way: 'Eier hart kochen, zerkrümeln und trocknen: Für solches Ei gilt diese Grenze nicht.',
  },
  'dried-egg-white': {
    title: 'Getrocknetes Eiklar',
    reason:
      'Getrocknetes Eiklar behält sein Avidin, das Biotin bindet, und Hemmstoffe, die die Bauchspeicheldrüse vergrößern; eine halbe Stunde bei 121 °C nahm von beidem das meiste weg, 80 °C nicht.',
    way: 'Hart gekochtes Ei, getrocknet, oder getrocknete Insekten nehmen.',
  },
  'fish-liver-oil': {
    title: 'Lebertran',
    reason:
      'Lebertran enthält 1 000 000 IE Vitamin A und 100 000 IE Vitamin D je Kilogramm: Ein Hundertstel der Mischung bringt viermal so viel Vitamin A, wie eine Maus braucht, und ihr ganzes Vitamin D, zusätzlich zu dem der Pellets, und beide reichern sich an.',
    way: 'Die Vitamine A und D stecken in den Pellets; für Fett ein paar Saaten nehmen.',
  },
  'fish-oil': {
    title: 'Fischöl',
    reason:
      'Fischöl wird, über trockenes Futter verteilt, innerhalb von Wochen ranzig und verbraucht Vitamin E; wie viel Vitamin A und D ein Öl enthält, sagt nur sein Etikett.',
    way: 'Stattdessen ein wenig gekochten Fisch oder ein paar Hanfsamen geben.',
  },
  'organ-meat': {
    title: 'Leber, Niere und andere Innereien',
    reason:
      'Ein Kilogramm Rinderleber enthält frisch 170 000 IE Vitamin A und getrocknet weit über 500 000; bei 1 % der Mischung bringt getrocknete Leber allein mehr als die 2400 IE, die eine Maus je Kilogramm braucht, und Vitamin A reichert sich an.',
    way: 'Gekochtes Muskelfleisch, Ei oder getrocknete Insekten nehmen.',
  },
  'cooked-bones': {
    title: 'Gekochte Knochen',
    reason:
      'Gekochte Knochen, vor allem von Geflügel, brechen in scharfe Splitter, die Maul, Backentasche und Darm durchstechen.',
    way: 'Aus gekochtem Fleisch und Fisch jeden Knochen entfernen; zum Nagen Zweige von Apfel oder Hasel geben.',
  },
  'wild-caught-insects': {
    title: 'Draußen gefangene Insekten',
    reason:
      'Insekten aus Garten oder Feld können Spritzmittel, Schneckenkorn und Würmer tragen, und manche sind selbst giftig; tote vom Fensterbrett starben meist an Spray.',
    way: 'Als Futter gezüchtete Insekten kaufen, getrocknet oder lebend.',
  },
  'people-supplements': {
    title: 'Vitaminpillen und -tropfen für Menschen',
    reason:
      'Eine Tablette enthält die Vitamine eines Menschen von 70 kg; im Napf eines Tieres von 100 g sind das Hunderte Tage Vitamin A und D auf einmal.',
    way: 'Die Vitamine stecken in den Pellets; was fehlt, dosiert die Tierarztpraxis.',
  },
  'processed-meat': {
    title: 'Salzige Wurst- und Fleischwaren',
    reason: 'Wurst, Schinken und Speck sind gesalzen, gepökelt, fett und oft mit Knoblauch gewürzt.',
    way: 'Schlicht gekochtes Huhn oder getrocknete Insekten nehmen.',
  },
  'bread-pastry': {
    title: 'Brot, Kuchen und Kekse',
    reason: 'Brot und Gebäck bringen Salz, Zucker und Fett; weiches Brot wird im Vorratsnest sauer.',
    way: 'Schlichtes Getreide nehmen, oder einen Krümel trockenes, ungesalzenes Knäckebrot.',
  },
  'raw-dough': {
    title: 'Roher Teig',
    reason:
      'Teig mit lebender Hefe geht im warmen Magen weiter auf: Das Gas dehnt ihn, und der Alkohol vergiftet. Jedes Tier kann Schaden nehmen; die meisten bekannten Fälle sind Hunde.',
    way: 'Keinen Teig in die Nähe des Geheges lassen; schlichte Getreideflocken tun es auch.',
  },
  'live-yeast': {
    title: 'Lebende Hefe',
    reason: 'Backhefe lebt und gärt im Darm weiter, mit Gas und Alkohol.',
    way: 'Getrocknete Bierhefe oder Hefeflocken nehmen, die tot sind.',
  },
  leavening: {
    title: 'Backpulver und Natron',
    reason:
      'Triebmittel setzen im Magen Gas frei, das ein Hamster nicht aufstoßen kann, und bestehen größtenteils aus Natrium: Natron enthält 27 g in 100 g.',
    way: 'Weglassen; in einer Mischung muss nichts aufgehen.',
  },
  xylitol: {
    title: 'Xylit und zuckerfreie Süßigkeiten',
    reason:
      'Xylit lässt beim Hund den Blutzucker abstürzen und schadet innerhalb von Stunden der Leber; Nagetiere vertragen es wohl besser, im Futter hat es aber nichts zu suchen.',
    way: 'Süßigkeiten und Kaugummi weglassen.',
  },
  sweets: {
    title: 'Süßigkeiten',
    reason:
      'Zucker, Farbstoff und Klebrigkeit in einem: Süßes setzt sich in den Backentaschen fest und nährt keinen Hamster.',
    way: 'Einen einzelnen Samen oder ein getrocknetes Insekt als Leckerli nehmen.',
  },
  mouldy: {
    title: 'Schimmlige, muffige oder befallene Ware',
    reason:
      'Schimmelgifte überstehen Trocknen und Backen und schaden der Leber in Spuren; Insekten bringen Kot und mehr Schimmel.',
    way: 'Die ganze Packung wegwerfen, die Dose auswischen und neue Trockenware gleich nach dem Kauf einfrieren.',
  },
  ergot: {
    title: 'Mutterkorn',
    reason:
      'Mutterkorn ist der dunkle, hornförmige Körper eines Pilzes, der in der Ähre den Platz eines Korns einnimmt; seine Alkaloide verengen die Blutgefäße, und schon kleine Mengen im Futter bremsen das Wachstum.',
    way: 'Die ganze Packung wegwerfen; auch ausgelesenes Getreide behält Bruchstücke und Staub.',
  },
  'ergot-in-grain': {
    title: 'Roggen, Triticale und Weizen im Korn: auf Mutterkorn achten',
    reason:
      'Am häufigsten Roggen und Triticale, manchmal Weizen, tragen Mutterkorn, einen dunklen Körper, länger als das Korn und in kleinen Mengen giftig. Für Lebensmittel gereinigtes Getreide enthält kaum welches; Getreide vom Feld oder als Futter verkauftes kann welches enthalten.',
    way: 'Für Lebensmittel gereinigtes Getreide kaufen und ausbreiten: Beim ersten dunklen, hornförmigen Körper die Packung nicht verwenden.',
  },
  'cooked-with-salt': {
    title: 'Mit Salz Gekochtes oder Eingelegtes',
    reason:
      'Salz aus Topf oder Lake bleibt im Essen; die Maus braucht etwa ein halbes Gramm Natrium je Kilogramm Futter.',
    way: 'Selbst ohne Salz kochen, oder gut abspülen.',
  },
  salt: {
    title: 'Salz',
    reason:
      'Pellets und schlichte Zutaten enthalten das Natrium schon, das ein Hamster braucht; ein halbes Gramm je Kilogramm Futter genügt der Maus, und ein Gramm Salz bringt 0,4 g. Die Grenze lässt durch, was eine gekaufte Zutat davon enthalten mag, und nichts, was zugesetzt wird.',
    way: 'Salz aus der Mischung weglassen; frisches Wasser steht immer bereit.',
  },
  'salt-lick': {
    title: 'Salz- und Mineralsteine',
    reason:
      'Ein Leckstein verführt ein Tier von 100 g zu einem Vielfachen des Natriums, das es am Tag braucht; in den Pellets ist genug.',
    way: 'Zweige von Apfel oder Hasel zum Nagen geben.',
  },
  'sun-dried-tomato': {
    title: 'Sonnengetrocknete Tomaten: meist gesalzen',
    reason:
      'Sonnengetrocknete Tomaten werden meist vor dem Trocknen gesalzen oder liegen in Öl; die Zeile der Tabelle (107 mg Natrium in 100 g) gilt für ungesalzene, gesalzene können zwanzigmal so viel enthalten.',
    way: 'Reife Tomaten selbst ohne Salz trocknen, oder ohne Salz auf dem Etikett kaufen und dieses Etikett eingeben.',
  },
  'elderberry-raw': {
    title: 'Rohe Holunderbeeren und Holunderblatt',
    reason:
      'Rohe Holunderbeeren, Blätter und Rinde enthalten cyanogene Glykoside und stören den Darm; reife, gekochte Beeren nicht.',
    way: 'Hagebutte oder Brombeere nehmen.',
  },
  'star-fruit': {
    title: 'Sternfrucht',
    reason:
      'Die Sternfrucht ist sehr reich an Oxalsäure und enthält ein Nervengift, das Menschen mit schwachen Nieren getötet hat; zu Hamstern ist nichts bekannt.',
    way: 'Anderes Obst nehmen.',
  },
  'acorn-and-horse-chestnut': {
    title: 'Rosskastanien und Eicheln',
    reason:
      'Rosskastanien sind giftig, und Eicheln sind reich an Gerbstoff; Esskastanien sind etwas anderes und essbar.',
    way: 'Als Lebensmittel gekaufte Esskastanien nehmen; Rosskastanien und Eicheln liegen lassen.',
  },
  'beech-mast': {
    title: 'Rohe Bucheckern',
    reason:
      'Rohe Bucheckern enthalten Oxalsäure und ein bitteres Gift, Fagin, das Menschen, Pferde und Rinder krank gemacht hat; Rösten nimmt das meiste weg.',
    way: 'Rösten und schälen und ab und zu ein Stückchen geben, oder Haselnuss nehmen.',
  },
};
