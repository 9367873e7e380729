import type { Access } from '../en/access.ts';
import type { Figures } from '../figures.ts';

export const access = (f: Figures): Access => ({
  refusal: {
    fileTooLarge: (megabytes) =>
      `het bestand is groter dan ${f.number(megabytes)} MB, meer gaat niet; ga in plaats daarvan terug naar een back-up, of verwijder wat oud is voor het bewaren`,
    fileRefused: 'dit kan niet worden overgenomen',
    notAsLookedAt:
      'bestand of huishouden zijn anders dan toen je keek; bekijk nog eens wat er zou veranderen',
    tooManyDevices: (most) =>
      `dit huishouden heeft ${f.number(most)} apparaten; haal er een weg dat niet meer wordt gebruikt`,
    noDevice: 'dit apparaat bestaat niet; misschien is het al weggehaald',
    onlyThisMachine: 'alleen deze computer komt erin; start met --lan om andere apparaten toe te laten',
    nothingToPair: 'deze server is er alleen voor zijn eigen computer; daar hoeft niets te worden gekoppeld',
    tooManyTries: (wait) => `te veel foute codes; wacht ${wait}, of gebruik de link van de QR-code`,
    noCode: 'deze code bestaat niet of is verlopen; lees hem nog eens, of maak een nieuwe',
    noCodeWait: (wait) =>
      `deze code bestaat niet of is verlopen; lees hem nog eens, of maak een nieuwe; wacht dan ${wait}`,
    seconds: (n) => `${f.count(n, { one: 'seconde', other: 'seconden' })}`,
    minutes: (n) => `${f.count(n, { one: 'minuut', other: 'minuten' })}`,
    deviceName: 'schrijf letters en cijfers op één regel',
    throughProxy: 'dit kwam via een proxy, en alleen deze computer komt erin; start met --behind-proxy',
    notPaired: 'dit apparaat is niet gekoppeld; koppel het met een code van een gekoppeld apparaat',
    foreignHost: (host) =>
      `onder “${host}” is hier niets; gebruik http://localhost, --lan voor het thuisnetwerk, of voeg met --name een naam toe`,
    foreignPage: (origin) => `pagina’s van ${origin} mogen hier niet in`,
    noOrigin: 'een pagina die schrijft, moet zeggen waar ze vandaan komt (Origin)',
    fromElsewhere: 'vreemde pagina’s mogen hier niet in',
    sendJson: (why) => `${why}; stuur JSON`,
    serverFailed: 'op de server ging iets mis en er is niets geschreven; in het logboek staat meer',
    unknownAddress: (what) => `${what} bestaat niet; zie /api/openapi.json`,
    bodyTooLarge: (megabytes) => `de inhoud is groter dan ${f.number(megabytes)} MB; stuur minder`,
    bodyTooDeep: (most) => `de inhoud zit meer dan ${f.number(most)} lagen diep; controleer de haakjes`,
    noVersion: 'zeg wat je wijzigt: If-Match met de versie die je zag, of If-None-Match: * voor iets nieuws',
    otherAddress: (id, address) => `/id is “${id}”, maar het adres zegt “${address}”; maak ze gelijk`,
  },
  rescue: {
    damaged: 'Het huishoudbestand is beschadigd',
    replaced: 'Het huishoudbestand is vervangen',
    gone: 'Het huishoudbestand is weg',
    foreign: 'Het huishoudbestand is niet te lezen',
    empty: 'Het huishoudbestand is leeg',
    other: 'Het huishouden kan niet worden geopend',
    intro:
      'Er is niets in geschreven. Kies hoe het verder gaat; het bestand zoals het nu is, blijft onder een andere naam ernaast bewaard.',
    didNotHelp: 'Dat hielp niet:',
    noLonger: 'dit kan niet meer',
    done: 'Klaar',
    open: 'Pouchful openen',
    backups: 'Back-ups',
    noBackup: 'Er is geen hele back-up.',
    goBackTitle: 'Teruggaan naar een back-up',
    goBackText: 'Wat daarna is gewijzigd, staat er niet in.',
    newest: (when) => `Teruggaan naar de nieuwste: ${when} UTC`,
    goBack: (when) => `Teruggaan: ${when} UTC`,
    saveTitle: 'Redden wat leesbaar is',
    saveText: 'Leest het bestand stukje bij beetje en zet alles wat heel is in een nieuw.',
    saveIf: 'Als de nieuwste back-up niet nieuw genoeg is, probeer dan dit.',
    asItIsTitle: 'Het bestand gebruiken zoals het nu is',
    asItIsText:
      'Hier is een kopie neergezet terwijl het logboek van het vorige bestand er nog naast stond. Het logboek wordt opzijgezet, zodat het de kopie niet ongedaan maakt.',
    withLogTitle: 'Heeft niemand hier een kopie neergezet?',
    withLogText: 'Dan horen bestand en logboek bij elkaar, en staan de nieuwste wijzigingen in het logboek.',
    withLog: 'Bestand en logboek samen gebruiken',
    anewTitle: 'Opnieuw beginnen',
    anewText: 'Begint een leeg huishouden. Back-ups blijven waar ze zijn.',
    anew: 'Een leeg huishouden beginnen',
    found: 'Wat er is gevonden',
  },
});
