/** What the caution list says to a keeper, by the id of the caution in Dutch. Sources stand beside the list itself. */
import type { CautionTexts } from '../en/caution-texts.ts';

const GATHER =
  'Pluk alleen planten die je zeker kent, weg van wegen en bespoten velden; laat ze bij twijfel staan.';

export const CAUTION_TEXTS: CautionTexts = {
  'raw-kidney-type-beans': {
    title: 'Rauwe kidneybonen en verwanten',
    reason:
      'Gedroogde kidney-, witte, pinto-, lima- en andere gewone bonen bevatten lectinen die de darm aantasten; rauwe kidneybonen hebben in voerproeven ratten gedood. Over hamsters is niets gevonden, maar hun darm lijkt op die van de rat.',
    way: 'Nooit rauw in een mengsel doen: een nacht weken, het water weggooien, 30 minuten hard koken, dan drogen, en de regel van de gekookte boon nemen.',
  },
  'kidney-type-beans': {
    title: 'Kidneybonen en verwanten: koken',
    reason:
      'Gedroogde kidney-, witte, pinto-, lima- en andere gewone bonen zijn rauw schadelijk en gekookt goed voer; langzaam verwarmen is niet genoeg.',
    way: 'Minstens 5 uur weken, het water weggooien, 30 minuten hard koken, dan drogen.',
  },
  'soya-raw': {
    title: 'Rauwe sojabonen: verhitten',
    reason:
      'Jonge goudhamsters die 32 dagen rauw sojameel kregen, groeiden veel slechter dan die met verhit meel, en hun alvleesklier was vergroot: de trypsineremmers storen de eiwitvertering. In een langere proef van 15 maanden was de alvleesklier niet vergroot.',
    way: 'Doorkoken of droog roosteren, of getoaste sojavlokken kopen.',
  },
  'raw-soya-beans': {
    title: 'Rauwe sojabonen',
    reason:
      'Jonge goudhamsters met rauw sojameel groeiden veel slechter dan die met verhit meel, en hun alvleesklier was vergroot.',
    way: 'Nooit rauw in een mengsel doen: doorkoken of droog roosteren, of getoaste soja kopen.',
  },
  'low-lectin-pulses-raw': {
    title: 'Rauwe linzen, erwten, kikkererwten, mungbonen: hoogstens een vijfde',
    reason:
      'Hun lectinen deden ratten geen kwaad, maar rauw houden ze wat trypsineremmer, en ratten verteerden rauwe kikkererwten slechter dan gekookte. Biggen groeiden met tot 22 % linzen of 36 % rauwe erwten in al hun voer even goed, en met 30 % linzen slechter; over hamsters is niets gevonden.',
    way: 'Houd alle rauwe peulvruchten samen op een vijfde van het mengsel; meer alleen gevlokt, geroosterd, gekiemd of gekookt en gedroogd.',
  },
  'broad-bean-raw': {
    title: 'Rauwe tuinbonen: weinig, liever gekookt',
    reason:
      'Tuinbonen (veldbonen) bevatten vicine en convicine, die bij gevoelige mensen rode bloedcellen kunnen afbreken; of hamsters gevoelig zijn is niet bekend. Ratten met rauwe groeiden 28 dagen als met verhitte, maar benutten het eiwit slechter.',
    way: 'Houd rauwe of gevlokte op 5 % van het mengsel, of kook en pel ze en voer ze gedroogd.',
  },
  'lupin-raw': {
    title: 'Rauwe lupinezaden',
    reason:
      'Bittere lupinen bevatten alkaloïden die op zenuwen en hart werken; zoete lupinen minder. Voor huisdieren was geen veilige hoeveelheid uit te rekenen.',
    way: 'Alleen zoete lupinen nemen die als levensmiddel verkocht worden, in ververst water geweekt en gekookt; nooit tuinlupinen plukken.',
  },
  'vetch-grass-pea': {
    title: 'Wikke en zaailathyrus',
    reason:
      'Lathyrussoorten bevatten een aminozuur dat mensen en dieren verlamt die er maanden van leven; wikkezaden bevatten andere die de zenuwen schaden. Beide komen in duiven- en vogelmengsels voor.',
    way: 'Erwten of linzen nemen, en de ronde donkere wikkezaden uit vogelmengsels halen.',
  },
  'onion-family': {
    title: 'Uienfamilie',
    reason:
      'Ui, knoflook, prei, bieslook en sjalot breken bij honden, katten en vee rode bloedcellen af, rauw, gekookt of als poeder; knoflook werkt drie tot vijf keer zo sterk als ui. Voor hamsters zijn er geen cijfers.',
    way: 'In elke vorm weglaten, ook als smaakmaker in gekookt eten.',
  },
  citrus: {
    title: 'Citrusfruit',
    reason:
      'Houders laten citrus weg omdat het te zuur is voor bek en wangzakken. Een onderzoek bij hamsters is niet gevonden, dus dit berust alleen op gewoonte.',
    way: 'Rozenbottel of zwarte bes nemen als vitamine C of kleur gewenst is.',
  },
  avocado: {
    title: 'Avocado',
    reason:
      'Vruchtvlees, blad, schil en pit bevatten persine, dat hartspier en melkklier beschadigt; muizen, ratten en cavia’s horen bij de dieren die er schade van kregen.',
    way: 'Weglaten; neem voor vet liever een paar zaden.',
  },
  chocolate: {
    title: 'Chocolade en cacao',
    reason:
      'Cacao bevat theobromine en cafeïne, die het hart opjagen; een hamster weegt zo weinig dat een kruimel al telt. Chocolade plakt ook in de wangzakken.',
    way: 'Weglaten; johannesbroodmeel heeft de kleur en geen theobromine.',
  },
  caffeine: {
    title: 'Koffie, thee en cola',
    reason:
      'Cafeïne jaagt hart en zenuwen op, en een hamster weegt zo weinig dat een paar blaadjes of wat koffiedik al telt. Kruidenthee zonder theeblad is niet bedoeld.',
    way: 'Gedroogde kruiden nemen die geen thee of maté zijn, zoals pepermunt.',
  },
  alcohol: {
    title: 'Alcohol',
    reason:
      'Alcohol schaadt hersenen en lever, en een hamster weegt zo weinig dat een slok al een zware dosis is.',
    way: 'Weglaten; gekookt eten moet zonder alcohol gekookt zijn.',
  },
  'stone-fruit-kernels': {
    title: 'Pitten en stenen van steenvruchten',
    reason:
      'De pitten van abrikoos, perzik, pruim en kers geven bij kauwen blauwzuur af; drie kleine abrikozenpitten is het meeste dat een volwassen mens in één keer veilig kan eten.',
    way: 'Alleen het vruchtvlees voeren, zonder de steen.',
  },
  'stone-fruit': {
    title: 'Steenvruchten: haal de steen eruit',
    reason:
      'Het vruchtvlees mag in kleine stukjes gevoerd worden; de pit in de steen geeft bij kauwen blauwzuur af.',
    way: 'Ontpit het fruit en gooi de stenen weg waar geen dier ze vindt.',
  },
  'apple-pips': {
    title: 'Appel- en perenpitten: klokhuis eruit',
    reason:
      'De pitten bevatten wat amygdaline, dat bij kauwen blauwzuur afgeeft; een paar doen voor zover bekend geen kwaad, maar ze zijn makkelijk weg te snijden.',
    way: 'Haal het klokhuis eruit voor je snijdt of droogt.',
  },
  'bitter-almond': {
    title: 'Bittere amandelen',
    reason:
      'Bittere amandelen bevatten veel meer amygdaline dan de meeste eetbare zaden en geven bij kauwen blauwzuur af.',
    way: 'Neem in plaats daarvan hazelnoot of walnoot.',
  },
  almond: {
    title: 'Amandelen',
    reason:
      'Zoete amandelen zijn als voer onschadelijk, maar er kan een bittere tussen zitten, en één bittere amandel is veel voor een hamster.',
    way: 'Neem in plaats daarvan hazelnoot of walnoot, of als zoet verkochte amandelen, in stukjes.',
  },
  linseed: {
    title: 'Lijnzaad',
    reason:
      'Lijnzaad bevat cyanogene glycosiden, die blauwzuur afgeven zodra het zaad geplet of gekauwd wordt: de voerwet staat 250 mg blauwzuur per kilogram lijnzaad toe, maar 50 mg per kilogram compleet voer; het meeste in een monster was 407 mg. Bij 5 % van het mengsel brengt zelfs dat monster zo’n 20 mg per kilogram, en het vet blijft ook laag.',
    way: 'Houd het op 5 % van het mengsel, heel en vers; sesam, hennep of pompoenpit kan de rest doen.',
  },
  'brazil-nut': {
    title: 'Paranoten',
    reason:
      'Paranoten bevatten gemiddeld zo’n 19 tot 49 mg seleen per kilogram en soms meer dan 100 mg, terwijl de muis 0,15 mg nodig heeft; aan ratten gevoerd schaadde dat seleen de lever net als elk ander.',
    way: 'Neem hazelnoot of walnoot.',
  },
  'poppy-seed': {
    title: 'Maanzaad',
    reason:
      'Schoon maanzaad bevat geen opiumalkaloïden, maar stof en sap van de bol laten er morfine op achter, in sommige pakken genoeg om de voor mensen veilige hoeveelheid te overschrijden.',
    way: 'Koop zaad dat als levensmiddel verkocht wordt, was en droog het, en houd het op een snufje; sesam of chia kan ook.',
  },
  'poppy-heads': {
    title: 'Papaverbollen en papaverstro',
    reason:
      'Bol en stengel van de slaappapaver bevatten morfine en verwanten; een droge bol is voor zo’n klein dier vergif.',
    way: 'Geef een aar trosgierst of een zonnebloemhoofd om aan te plukken.',
  },
  'mustard-seed': {
    title: 'Mosterd',
    reason:
      'Mosterdzaad geeft, gekauwd of gemalen en bevochtigd, mosterdoliën af die in bek en darm branden, en de glucosinolaten remmen de schildklier.',
    way: 'Weglaten, of hoogstens een paar hele zaden van een vogelmengsel doorlaten; neem sesam of nigerzaad.',
  },
  rapeseed: {
    title: 'Raapzaad',
    reason:
      'Raapzaad bevat glucosinolaten, die tegen de schildklier werken en de smaak bederven, en oude rassen veel erucazuur; voor olie gekweekt zaad bevat van beide minder, maar een pak vertelt niet welk het is.',
    way: 'Houd het op een paar zaden; niger-, sesam- of hennepzaad kan ook.',
  },
  cottonseed: {
    title: 'Katoenzaad',
    reason:
      'Katoenzaad en het meel ervan bevatten gossypol, dat zich ophoopt en hart, lever en vruchtbaarheid schaadt; dieren met één maag verdragen het minst.',
    way: 'Neem zonnebloem- of pompoenpitten.',
  },
  ginkgo: {
    title: 'Ginkgonoten en -bladeren',
    reason:
      'Ginkgozaden bevatten een gif dat tegen vitamine B6 werkt en krampen geeft; tien kan voor een mens al te veel zijn, en koken haalt maar een deel weg.',
    way: 'Neem hazelnoot of walnoot; van bladeren hazelaar of appel.',
  },
  'seed-for-sowing': {
    title: 'Zaaizaad',
    reason:
      'Zaaizaad kan behandeld zijn tegen schimmels en insecten; in de VS moet het gekleurd zijn en gemerkt als “geen voedsel of voer”, maar los of overgeschept zaad vertelt niets.',
    way: 'Koop zaad dat als levensmiddel of voer verkocht wordt, en voer nooit resten van zaaizaad.',
  },
  'potato-raw': {
    title: 'Rauwe aardappel: koken, nooit groen of met uitlopers',
    reason:
      'Rauwe aardappel bevat solanine en chaconine, het meest in groene schil en uitlopers; koken en schillen haalt een deel weg. Voor huisdieren was geen veilige hoeveelheid uit te rekenen.',
    way: 'Schil, snijd ogen en groene delen weg, kook, en gooi het water weg.',
  },
  'nightshade-green': {
    title: 'Groene delen van aardappel, tomaat en aubergine',
    reason:
      'Bladeren, stengels, uitlopers en groene vruchten van de nachtschadefamilie bevatten glycoalkaloïden die darm en zenuwen schaden.',
    way: 'Voer alleen rijp tomatenvlees en gekookte, geschilde aardappel.',
  },
  'aubergine-raw': {
    title: 'Aubergine',
    reason: 'Aubergine bevat glycoalkaloïden, onrijp meer; hoeveel een hamster verdraagt is niet bekend.',
    way: 'Weglaten, of een kruimel rijp, gekookt vruchtvlees voeren.',
  },
  rhubarb: {
    title: 'Rabarber',
    reason: 'Rabarber hoort bij het eten met het meeste oxaalzuur, en de bladeren zijn giftig.',
    way: 'Steel, blad en wortel weglaten.',
  },
  'high-oxalate-leaves': {
    title: 'Spinazie, snijbiet, bietenblad, zuring',
    reason:
      'Deze bladeren zijn rijk aan oxaalzuur, dat calcium bindt en kristallen in de urine kan achterlaten; het bewijs komt van mensen.',
    way: 'Kies bladeren met weinig oxaalzuur, zoals romeinse sla, paardenbloem of paksoi; koken en afgieten haalt een deel weg.',
  },
  'purslane-oxalate': {
    title: 'Postelein',
    reason:
      'Postelein is rijk aan oxaalzuur, dat calcium bindt; een beetje wordt vaak gevoerd en schade bij hamsters is nergens gevonden.',
    way: 'Geef nu en dan een takje naast het mengsel.',
  },
  parsley: {
    title: 'Peterselie',
    reason:
      'Peterselie is rijk aan calcium en vrij rijk aan oxaalzuur, dus geven houders er snufjes van; zaden en bladeren bevatten ook myristicine.',
    way: 'Een snufje gedroogde peterselie in het mengsel is genoeg.',
  },
  'sugary-dried-fruit': {
    title: 'Suikerrijk gedroogd fruit',
    reason:
      'Gedroogd fruit is voor de helft tot vier vijfde suiker. Goudhamsters met heel veel vruchtensuiker in het voer (60 %) verdroegen suiker daarna slecht; wat een paar rozijnen doen is niet bekend.',
    way: 'Neem gevriesdroogde groente of rozenbottel voor kleur; gedroogd fruit alleen als zeldzame traktatie.',
  },
  'dwarf-sugary-dried-fruit': {
    title: 'Suikerrijk gedroogd fruit voor dwerghamsters en dieren met aanleg voor suikerziekte',
    reason:
      'Campbelli-dwerghamsters en hun kruisingen krijgen makkelijk suikerziekte, en houders geven alle dwerghamsters zo weinig suiker als ze kunnen. Dat berust op ervaring van houders en dierenartsen, niet op proeven.',
    way: 'Laat gedroogd fruit uit het mengsel van zo’n dier.',
  },
  'dwarf-sweet-fruit': {
    title: 'Zoet fruit en suikermais voor dwerghamsters en dieren met aanleg voor suikerziekte',
    reason:
      'Dwerghamsters krijgen makkelijk suikerziekte, dus geven houders zoet fruit, johannesbrood en suikermais spaarzaam of helemaal niet. Dat berust op ervaring, niet op proeven.',
    way: 'Geef in plaats daarvan groente en blad.',
  },
  grape: {
    title: 'Druiven',
    reason:
      'Druiven en rozijnen kunnen bij een hond de nieren laten uitvallen; van een hamster is zo’n geval nergens beschreven, maar ze zijn ook erg zoet.',
    way: 'Geef hoogstens nu en dan een schijfje, nooit in het mengsel.',
  },
  'added-sugar': {
    title: 'Suiker, honing en stroop',
    reason:
      'Suiker, honing, stroop en melasse brengen suiker en niets dat een hamster nodig heeft, en plakken in de wangzakken. Goudhamsters met 60 % vruchtensuiker in het voer verdroegen suiker daarna slecht.',
    way: 'Weglaten; een goed mengsel is niet gezoet.',
  },
  'nut-butter': {
    title: 'Notenpasta en andere kleverige pasta’s',
    reason: 'Kleverig eten koekt vast in de wangzakken; het kan er niet uit gedrukt worden en bederft daar.',
    way: 'Neem hele of gehakte droge noten.',
  },
  'sticky-when-soft': {
    title: 'Zacht gedroogd fruit: knapperig drogen',
    reason: 'Zacht, kleverig gedroogd fruit koekt vast in de wangzakken.',
    way: 'Snijd het klein en droog het tot het breekt, of laat het weg.',
  },
  sulphured: {
    title: 'Gezwaveld gedroogd fruit',
    reason:
      'Zwaveldioxide en sulfieten houden gedroogd fruit helder en breken vitamine B1 af; honden en katten met sulfiet in hun vlees werden ziek door het tekort.',
    way: 'Koop ongezwaveld fruit, eerder bruin dan helder, of droog het zelf.',
  },
  'quinoa-unwashed': {
    title: 'Quinoa: wassen',
    reason:
      'Het vlies van quinoa bevat bittere saponinen die het darmslijmvlies schaden; ratten aten ongewassen quinoa slecht en groeiden er weinig op, en op gewassen goed.',
    way: 'Spoel tot het water niet meer schuimt en droog het weer, of koop het gewassen of gepolijst.',
  },
  awns: {
    title: 'Scherpe kafnaalden: verwijderen',
    reason:
      'Kafnaalden van gerst en naaldaar en borstelige haveraartjes kunnen het slijmvlies van de wangzakken doorboren.',
    way: 'Koop graan zonder kafnaalden, of wrijf ze eraf en zeef; kijk aren met de hand na.',
  },
  chilli: {
    title: 'Chilipepers',
    reason:
      'Capsaïcine brandt in bek en darm, en hele gedroogde chilipepers zijn scherp in de wangzakken; een hamster kan je dat niet op tijd vertellen.',
    way: 'Neem zoete paprika, gedroogd of vers.',
  },
  'salted-or-oil-roasted': {
    title: 'Gezouten, gefrituurd of in olie geroosterd',
    reason:
      'Zout en bakolie brengen natrium en vet ver boven wat een hamster nodig heeft; de muis heeft ongeveer een halve gram natrium per kilogram voer nodig.',
    way: 'Koop rauwe of droog geroosterde, ongezouten zaden en noten.',
  },
  'peanut-raw': {
    title: 'Pinda’s',
    reason:
      'Pinda’s zijn de noten die het vaakst aflatoxine bevatten, een schimmelgif dat de lever schaadt; goede bevatten een paar microgram per kilogram, slechte meer dan duizend. Ze zijn ook erg vet.',
    way: 'Koop pinda’s die voor mensen verkocht worden, vers en ongezouten; gooi verschrompelde, verkleurde of muffe weg.',
  },
  macadamia: {
    title: 'Macadamianoten',
    reason:
      'Macadamianoten maken honden zwak en wankel; van andere dieren is niets bekend, en het zijn de vetste noten van alle.',
    way: 'Neem hazelnoot of walnoot.',
  },
  nutmeg: {
    title: 'Nootmuskaat en foelie',
    reason:
      'Nootmuskaat, één of twee weken dagelijks gegeven, beschadigde de lever van muizen; bij mensen is een paar gram genoeg voor een vergiftiging.',
    way: 'Laat het weg uit al het eten dat je deelt.',
  },
  'cassava-raw': {
    title: 'Rauwe cassave',
    reason:
      'Wortel en blad van cassave geven blauwzuur af als ze niet zorgvuldig geschild, geweekt, geraspt of gekookt zijn.',
    way: 'Neem zoete aardappel.',
  },
  'taro-raw': {
    title: 'Rauwe taro en verwanten',
    reason:
      'Rauwe taro en de bladeren ervan zitten vol naalden van calciumoxalaat die in bek en keel steken tot ze goed gekookt zijn.',
    way: 'Neem zoete aardappel, of helemaal zacht gekookte taro.',
  },
  kelp: {
    title: 'Kelp en ander bruinwier',
    reason:
      'Gedroogde kelp bevat 1500 tot 8000 mg jodium per kilogram, blaaswier 500 tot 1000 mg, per pak verschillend, terwijl de muis 0,15 mg nodig heeft; te veel stoort de schildklier net als te weinig.',
    way: 'Het jodium zit in de brokjes; neem voor kleur en mineralen brandnetel of paardenbloemblad.',
  },
  tobacco: {
    title: 'Tabak',
    reason:
      'Nicotine, uit blad, peuk, kauwgom of vloeistof, overprikkelt de zenuwen en verlamt de adem; een kruimel is veel voor een hamster.',
    way: 'Houd het uit de kamer; neem als droog blad hazelaar, braam of brandnetel.',
  },
  hops: {
    title: 'Hop',
    reason:
      'Honden die hop aten, vers of uitgekookt, kregen meer dan 40 °C koorts en sommige stierven binnen enkele uren; het gif is niet bekend, en ook niet wat een hamster verdraagt.',
    way: 'Neem kamille of citroenmelisse als een geurig kruid gewenst is.',
  },
  cannabis: {
    title: 'Cannabis',
    reason:
      'Bloem, blad en hars van wiet werken op hart, zenuwen en lichaamswarmte; boter en snoep ermee hebben honden gedood. Hennepzaad is voer en niet bedoeld.',
    way: 'Hennepzaad mag gevoerd worden; blad en bloem van elke hennep blijven weg.',
  },
  'essential-oil': {
    title: 'Etherische olie',
    reason:
      'Een etherische olie is de plant honderd keer zo sterk: druppels tea tree-, eucalyptus- of tijmolie schaden lever en luchtwegen van kleine dieren.',
    way: 'Neem het gedroogde kruid zelf.',
  },
  'ornamental-gourd': {
    title: 'Sierkalebassen en bittere pompoenen',
    reason:
      'Sierkalebassen, en courgette of pompoen die bitter smaakt, bevatten cucurbitacinen, die de darm aantasten en bij koken of drogen blijven.',
    way: 'Neem pompoen en courgette die als levensmiddel verkocht worden, en proef zelf geteelde eerst: wat bitter is, gaat weg.',
  },
  'wild-mushroom': {
    title: 'Wilde paddenstoelen',
    reason: 'Sommige wilde paddenstoelen doden in sporen en zijn makkelijk te verwarren, vers of gedroogd.',
    way: 'Laat geplukte paddenstoelen weg; gekochte, gekweekte zijn iets anders.',
  },
  mushroom: {
    title: 'Gekweekte paddenstoelen',
    reason:
      'Champignons, oesterzwammen en shiitake die als levensmiddel gekocht zijn, zijn niet giftig; rauwe champignons bevatten agaritine, dat hitte en drogen verlagen, en geen ervan brengt een hamster veel.',
    way: 'Voer nu en dan een gekochte, gekookt of knapperig gedroogd; nooit een geplukte.',
  },
  bracken: {
    title: 'Adelaarsvaren',
    reason:
      'Adelaarsvaren vergiftigt dieren die er weken van eten, en gaf ratten en cavia’s in voerproeven gezwellen van darm en blaas.',
    way: GATHER,
  },
  ivy: {
    title: 'Klimop',
    reason: 'Bladeren en bessen van klimop bevatten saponinen die in bek en darm branden.',
    way: GATHER,
  },
  'true-lilies': {
    title: 'Lelies en lelietje-van-dalen',
    reason:
      'Lelietje-van-dalen bevat hartgiffen; echte lelies laten bij een kat de nieren uitvallen. Geen van beide hoort in voer.',
    way: GATHER,
  },
  yew: {
    title: 'Taxus',
    reason:
      'Alle delen van de taxus behalve het rode vlees zetten het hart stil; een paar naalden doden kleine dieren.',
    way: GATHER,
  },
  buttercup: {
    title: 'Boterbloem',
    reason: 'Verse boterbloem brandt in bek en darm; in droog hooi is het gif weg.',
    way: GATHER,
  },
  hellebore: {
    title: 'Nieskruid (kerstroos)',
    reason: 'Nieskruid bevat in alle delen hartgiffen en brandend sap, ook gedroogd.',
    way: GATHER,
  },
  clematis: {
    title: 'Clematis',
    reason: 'Clematis, wild of uit de tuin, brandt in bek en darm zoals boterbloem.',
    way: GATHER,
  },
  celandine: {
    title: 'Stinkende gouwe',
    reason: 'Het oranje sap van stinkende gouwe bevat alkaloïden die branden en de lever schaden.',
    way: GATHER,
  },
  cyclamen: {
    title: 'Cyclaam',
    reason: 'Cyclaam, vooral de knol, bevat saponinen die de darm aantasten en het hart storen.',
    way: GATHER,
  },
  'arum-family': {
    title: 'Aronskelk, calla en de kamerplanten van hun familie',
    reason:
      'Aronskelk, dieffenbachia, philodendron en verwanten zitten vol naalden van calciumoxalaat die in bek en keel steken; de rode bessen van de aronskelk lijken op voer.',
    way: GATHER,
  },
  hydrangea: {
    title: 'Hortensia',
    reason:
      'Bladeren, knoppen en bloemen van de hortensia bevatten glycosiden die blauwzuur kunnen afgeven en de darm storen.',
    way: GATHER,
  },
  wisteria: {
    title: 'Blauweregen',
    reason:
      'Zaden en peulen van blauweregen bevatten een lectine en een glycoside die de darm zwaar storen; twee zaden hebben kinderen ziek gemaakt.',
    way: GATHER,
  },
  'morning-glory': {
    title: 'Dagbloem en winde',
    reason:
      'Zaden van de dagbloem bevatten alkaloïden zoals die van moederkoren; winde bevat andere die darm en zenuwen storen.',
    way: GATHER,
  },
  tansy: {
    title: 'Boerenwormkruid, alsem, wijnruit, polei',
    reason:
      'Boerenwormkruid en alsem bevatten thujon, dat krampen geeft; wijnruit verbrandt de huid in de zon en polei verwoest de lever.',
    way: 'Neem oregano, tijm of pepermunt.',
  },
  sycamore: {
    title: 'Gewone esdoorn en vederesdoorn',
    reason:
      'Gevleugelde zaden, kiemplanten en bladeren van deze esdoorns bevatten hypoglycine A, dat spieren afbreekt; paarden sterven eraan.',
    way: 'Geef takken en blad van appel, hazelaar of wilg.',
  },
  'house-plants': {
    title: 'Sagopalm, kalanchoë, lantana, aloë',
    reason:
      'Sagopalm verwoest de lever, kalanchoë zet het hart stil, lantana en het sap van aloë schaden lever en darm.',
    way: GATHER,
  },
  foxglove: {
    title: 'Vingerhoedskruid',
    reason:
      'Vingerhoedskruid bevat digitalis, dat het hart stilzet; de jonge bladeren lijken op smeerwortel en toorts.',
    way: GATHER,
  },
  oleander: {
    title: 'Oleander',
    reason: 'Oleander bevat in alle delen hartgiffen, ook gedroogd.',
    way: GATHER,
  },
  hemlock: {
    title: 'Gevlekte scheerling, dubbelgangers, fluitenkruid',
    reason:
      'Gevlekte scheerling, waterscheerling en hondspeterselie doden door de adem te verlammen. Fluitenkruid zelf is onschadelijk, maar weinigen houden ze met zekerheid uit elkaar.',
    way: GATHER,
  },
  ragwort: {
    title: 'Jakobskruiskruid en klein kruiskruid',
    reason: 'Kruiskruid bevat pyrrolizidinealkaloïden die de lever verwoesten, ook in hooi.',
    way: GATHER,
  },
  comfrey: {
    title: 'Smeerwortel, bernagie, klein hoefblad, groot hoefblad',
    reason:
      'Smeerwortel en hoefblad, en in mindere mate bernagie, bevatten pyrrolizidinealkaloïden die de lever op den duur schaden.',
    way: GATHER,
  },
  'deadly-nightshade': {
    title: 'Wolfskers, doornappel, bitterzoet',
    reason:
      'Deze bevatten atropine en verwanten of solanine; bessen en bladeren vergiftigen in kleine hoeveelheden.',
    way: GATHER,
  },
  'autumn-crocus': {
    title: 'Herfsttijloos',
    reason: 'De bladeren lijken op daslook en bevatten colchicine, dat langzaam doodt, ook in hooi.',
    way: GATHER,
  },
  monkshood: {
    title: 'Monnikskap en ridderspoor',
    reason: 'Aconitine zet in sporen hart en adem stil.',
    way: GATHER,
  },
  laburnum: {
    title: 'Goudenregen, robinia, brem',
    reason: 'Goudenregen en brem vergiftigen door alkaloïden, robinia door lectinen, in bast, blad en zaad.',
    way: GATHER,
  },
  rhododendron: {
    title: 'Rododendron en azalea',
    reason: 'Bladeren en nectar van rododendron storen darm, hart en zenuwen.',
    way: GATHER,
  },
  'spring-bulbs': {
    title: 'Narcis, hyacint, tulp, sneeuwklokje, amaryllis',
    reason: 'Bollen en bladeren van voorjaarsbloemen bevatten alkaloïden die darm en hart storen.',
    way: GATHER,
  },
  'cherry-laurel': {
    title: 'Laurierkers, buxus, liguster, hulst, maretak, wonderboon, paternosterboontje',
    reason:
      'Deze heg- en tuinplanten en hun zaden bevatten blauwzuur, alkaloïden of lectinen en vergiftigen kleine dieren; van wonderboon en paternosterboontje is één zaad genoeg.',
    way: GATHER,
  },
  'st-johns-wort': {
    title: 'Sint-janskruid',
    reason:
      'Sint-janskruid laat de huid van grazers in de zon verbranden en verandert de werking van medicijnen.',
    way: 'Neem kamille of citroenmelisse.',
  },
  'sweet-clover': {
    title: 'Honingklaver: alleen gaaf en droog',
    reason:
      'Honingklaver is vers of goed gedroogd onschadelijk; schimmel maakt van de cumarine dicumarol, dat het bloed belet te stollen.',
    way: 'Droog het snel en knapperig, gooi weg wat muf ruikt, en neem verder rode klaver.',
  },
  conifer: {
    title: 'Eucalyptus, den, ceder',
    reason: 'Harsen en oliën van eucalyptus, den en ceder prikkelen de luchtwegen en belasten de lever.',
    way: 'Neem takken van appel, hazelaar of wilg.',
  },
  'cabbage-family': {
    title: 'Veel kool',
    reason:
      'Kool, bloemkool, broccoli en spruitjes gisten in de darm; hamsters kunnen niet boeren. Hoeveel te veel is, is niet onderzocht.',
    way: 'Geef weinig, gemengd met andere groente, en let op de keutels.',
  },
  iceberg: {
    title: 'IJsbergsla',
    reason: 'Bijna alleen water, verder weinig; veel ervan maakt de keutels zacht.',
    way: 'Geef romeinse sla, paardenbloem of andijvie naast het mengsel.',
  },
  'dog-or-cat-food': {
    title: 'Honden- of kattenvoer',
    reason:
      'Gemaakt voor een andere behoefte: vaak vet, gezouten, met knoflook gekruid, of veel rijker aan vitamine A en D.',
    way: 'Neem gedroogde insecten, ei of gekookte kip als dierlijk eiwit.',
  },
  'medicated-feed': {
    title: 'Voer met medicijn, kuikenvoer, antibiotica',
    reason:
      'Ampicilline, erytromycine, clindamycine, cefalosporinen en gentamicine doodden, in de bek gegeven, de meeste hamsters door de bacteriën die ze in de darm laten groeien. Kuikenvoer en ander veevoer kan coccidiostatica bevatten, die hart en spieren schaden van dieren waarvoor het niet bedoeld is.',
    way: 'Koop voer zonder medicijn, en geef een medicijn alleen zoals een dierenarts zegt die hamsters kent.',
  },
  'milk-lactose': {
    title: 'Melk en andere zuivel met lactose',
    reason:
      'Volwassen zoogdieren verteren lactose slecht, dus maakt melk de keutels zacht; gewone yoghurt en magere kwark bevatten minder of brengen eigen enzymen mee.',
    way: 'Geef een beetje gewone yoghurt of vetvrije hüttenkäse, vers, naast het mengsel.',
  },
  'raw-meat': {
    title: 'Rauw vlees en rauwe vis',
    reason: 'Rauw vlees en rauwe vis dragen ziektekiemen en bederven binnen enkele uren in een voorraadnest.',
    way: 'Kook het zonder zout of vet, droog het of voer het vers en haal resten dezelfde dag weg.',
  },
  'raw-egg': {
    title: 'Rauw ei: koken',
    reason:
      'Rauw eiwit bindt biotine, zodat ratten met veel ervan ziek werden; gekookt eiwit genas ze. Drogen haalt dat niet weg, en rauw ei kan ook salmonella dragen.',
    way: 'Kook het ei hard en droog de kruimels; gedroogd ei en gedroogd eiwit hebben eigen grenzen.',
  },
  'dried-egg': {
    title: 'Gedroogd heel ei: gekookt is beter',
    reason:
      'Drogen en pasteuriseren laten de avidine van het eiwit werkzaam: kuikens met 43 % onverhit gedroogd heel ei kwamen biotine tekort, want de dooier brengt te weinig om dat goed te maken. Wat een klein aandeel doet naast brokjes met biotine is niet onderzocht.',
    way: 'Kook eieren hard, verkruimel en droog ze: voor zulk ei geldt deze grens niet.',
  },
  'dried-egg-white': {
    title: 'Gedroogd eiwit (van het ei)',
    reason:
      'Gedroogd eiwit houdt zijn avidine, dat biotine bindt, en remmers die de alvleesklier vergroten; een half uur bij 121 °C nam van beide het meeste weg, 80 °C niet.',
    way: 'Neem hardgekookt ei, gedroogd, of gedroogde insecten.',
  },
  'fish-liver-oil': {
    title: 'Levertraan',
    reason:
      'Levertraan bevat 1 000 000 IE vitamine A en 100 000 IE vitamine D per kilogram: een honderdste van het mengsel brengt vier keer de vitamine A die een muis nodig heeft en al haar vitamine D, boven op die van de brokjes, en beide hopen zich op.',
    way: 'De vitamines A en D zitten in de brokjes; neem voor vet een paar zaden.',
  },
  'fish-oil': {
    title: 'Visolie',
    reason:
      'Visolie wordt, over droog voer verspreid, binnen enkele weken ranzig en verbruikt vitamine E; hoeveel vitamine A en D een olie bevat, zegt alleen het etiket.',
    way: 'Geef in plaats daarvan een beetje gekookte vis of een paar hennepzaden.',
  },
  'organ-meat': {
    title: 'Lever, nier en ander orgaanvlees',
    reason:
      'Een kilogram runderlever bevat vers 170 000 IE vitamine A en gedroogd ruim meer dan 500 000; bij 1 % van het mengsel brengt gedroogde lever alleen al meer dan de 2400 IE die een muis per kilogram nodig heeft, en vitamine A hoopt zich op.',
    way: 'Neem gekookt spiervlees, ei of gedroogde insecten.',
  },
  'cooked-bones': {
    title: 'Gekookte botten',
    reason:
      'Gekookte botten, vooral van gevogelte, breken in scherpe splinters die bek, wangzak en darm doorboren.',
    way: 'Haal elk bot uit gekookt vlees en vis; geef om te knagen takken van appel of hazelaar.',
  },
  'wild-caught-insects': {
    title: 'Buiten gevangen insecten',
    reason:
      'Insecten uit tuin of veld kunnen bestrijdingsmiddelen, slakkenkorrels en wormen dragen, en sommige zijn zelf giftig; dode van de vensterbank stierven meestal aan spray.',
    way: 'Koop als voer gekweekte insecten, gedroogd of levend.',
  },
  'people-supplements': {
    title: 'Vitaminepillen en -druppels voor mensen',
    reason:
      'Eén tablet bevat de vitamines van een mens van 70 kg; in het bakje van een dier van 100 g is dat honderden dagen vitamine A en D in één keer.',
    way: 'De vitamines zitten in de brokjes; wat ontbreekt, doseert een dierenarts.',
  },
  'processed-meat': {
    title: 'Zout bewerkt vlees',
    reason: 'Worst, ham en spek zijn gezouten, met nitriet gepekeld, vet en vaak met knoflook gekruid.',
    way: 'Neem gewone gekookte kip of gedroogde insecten.',
  },
  'bread-pastry': {
    title: 'Brood, cake en koekjes',
    reason: 'Brood en gebak brengen zout, suiker en vet; zacht brood wordt zuur in het voorraadnest.',
    way: 'Neem gewoon graan, of een kruimel droog ongezouten knäckebröd.',
  },
  'raw-dough': {
    title: 'Rauw deeg',
    reason:
      'Deeg met levende gist rijst door in de warme maag: het gas rekt hem op en de alcohol vergiftigt. Elk dier kan schade lijden; de meeste bekende gevallen zijn honden.',
    way: 'Laat geen deeg bij het verblijf; gewone graanvlokken kunnen ook.',
  },
  'live-yeast': {
    title: 'Levende gist',
    reason: 'Bakkersgist leeft en gist door in de darm, met gas en alcohol.',
    way: 'Neem gedroogde biergist of gistvlokken, die dood zijn.',
  },
  leavening: {
    title: 'Bakpoeder en zuiveringszout',
    reason:
      'Rijsmiddel geeft gas af in de maag, dat een hamster niet kan opboeren, en is vooral natrium: zuiveringszout bevat 27 g in 100 g.',
    way: 'Weglaten; in een mengsel hoeft niets te rijzen.',
  },
  xylitol: {
    title: 'Xylitol en suikervrij snoep',
    reason:
      'Xylitol laat bij een hond de bloedsuiker kelderen en schaadt binnen enkele uren de lever; knaagdieren lijken er beter tegen te kunnen, maar in voer hoort het niet.',
    way: 'Laat snoep en kauwgom weg.',
  },
  sweets: {
    title: 'Snoep',
    reason:
      'Suiker, kleurstof en kleverigheid in één: snoep koekt vast in de wangzakken en voedt geen hamster.',
    way: 'Neem één zaadje of een gedroogd insect als traktatie.',
  },
  mouldy: {
    title: 'Beschimmeld, muf of aangetast',
    reason:
      'Schimmelgiffen overleven drogen en bakken en schaden de lever in sporen; insecten brengen uitwerpselen en meer schimmel.',
    way: 'Gooi het hele pak weg, veeg de doos uit, en vries nieuwe droge waar meteen na aankoop in.',
  },
  ergot: {
    title: 'Moederkoren',
    reason:
      'Moederkoren is het donkere, hoornvormige lichaam van een schimmel die in de aar de plaats van een korrel inneemt; de alkaloïden vernauwen de bloedvaten en al kleine hoeveelheden in voer remmen de groei.',
    way: 'Gooi het hele pak weg; ook uitgezocht graan houdt brokjes en stof.',
  },
  'ergot-in-grain': {
    title: 'Rogge, triticale en tarwe als korrel: let op moederkoren',
    reason:
      'Het vaakst rogge en triticale, soms tarwe, dragen moederkoren, een donker lichaam, langer dan de korrel en in kleine hoeveelheden giftig. Voor levensmiddelen geschoond graan bevat er nauwelijks van; graan van het veld of als voer verkocht kan het bevatten.',
    way: 'Koop voor levensmiddelen geschoond graan en spreid het uit: gebruik het pak niet bij het eerste donkere, hoornvormige lichaam.',
  },
  'cooked-with-salt': {
    title: 'Met zout gekookt of ingelegd',
    reason:
      'Zout uit de pan of de pekel blijft in het eten; de muis heeft ongeveer een halve gram natrium per kilogram voer nodig.',
    way: 'Kook het zelf zonder zout, of spoel het goed af.',
  },
  salt: {
    title: 'Zout',
    reason:
      'Brokjes en gewone ingrediënten bevatten al het natrium dat een hamster nodig heeft; een halve gram per kilogram voer is genoeg voor de muis, en een gram zout brengt 0,4 g. De grens laat door wat een gekocht ingrediënt ervan kan bevatten en niets dat toegevoegd wordt.',
    way: 'Laat zout uit het mengsel; vers water staat er altijd.',
  },
  'salt-lick': {
    title: 'Zout- en mineraalstenen',
    reason:
      'Een liksteen verleidt een dier van 100 g tot vele malen het natrium dat het op een dag nodig heeft; de brokjes bevatten genoeg.',
    way: 'Geef takken van appel of hazelaar om te knagen.',
  },
  'sun-dried-tomato': {
    title: 'Zongedroogde tomaten: meestal gezouten',
    reason:
      'Zongedroogde tomaten zijn meestal voor het drogen gezouten, of liggen in olie; de regel in de tabel (107 mg natrium in 100 g) is van ongezouten, gezouten kunnen twintig keer zo veel bevatten.',
    way: 'Droog zelf rijpe tomaten zonder zout, of koop ze zonder zout op het etiket en vul dat etiket in.',
  },
  'elderberry-raw': {
    title: 'Rauwe vlierbessen en vlierblad',
    reason:
      'Rauwe vlierbessen, bladeren en bast bevatten cyanogene glycosiden en storen de darm; rijpe gekookte bessen niet.',
    way: 'Neem rozenbottel of braam.',
  },
  'star-fruit': {
    title: 'Stervrucht',
    reason:
      'Stervrucht is heel rijk aan oxaalzuur en bevat een zenuwgif dat mensen met zwakke nieren heeft gedood; over hamsters is niets bekend.',
    way: 'Neem ander fruit.',
  },
  'acorn-and-horse-chestnut': {
    title: 'Paardenkastanjes en eikels',
    reason:
      'Paardenkastanjes zijn giftig en eikels zijn rijk aan looizuur; tamme kastanjes zijn iets anders en eetbaar.',
    way: 'Neem tamme kastanjes die als levensmiddel gekocht zijn; laat paardenkastanjes en eikels liggen.',
  },
  'beech-mast': {
    title: 'Rauwe beukennootjes',
    reason:
      'Rauwe beukennootjes bevatten oxaalzuur en een bitter gif, fagine, dat mensen, paarden en koeien ziek heeft gemaakt; roosteren haalt het meeste weg.',
    way: 'Rooster en pel ze en geef nu en dan een stukje, of neem hazelnoot.',
  },
};
