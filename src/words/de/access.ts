import type { Access } from '../en/access.ts';
import type { Figures } from '../figures.ts';

export const access = (f: Figures): Access => ({
  refusal: {
    fileTooLarge: (megabytes) =>
      `die Datei ist größer als ${f.number(megabytes)} MB, mehr geht nicht; gehe stattdessen auf eine Sicherung zurück, oder lösche Altes vor dem Speichern`,
    fileRefused: 'das lässt sich nicht übernehmen',
    notAsLookedAt:
      'Datei oder Haushalt sind nicht mehr wie beim Ansehen; sieh noch einmal nach, was sich ändern würde',
    tooManyDevices: (most) =>
      `dieser Haushalt hat ${f.number(most)} Geräte; entferne eines, das nicht mehr benutzt wird`,
    noDevice: 'dieses Gerät gibt es nicht; vielleicht ist es schon entfernt',
    onlyThisMachine: 'nur dieser Computer kommt herein; starte mit --lan, um andere Geräte hereinzulassen',
    nothingToPair: 'dieser Server ist nur für seinen eigenen Computer da; dort muss nichts gekoppelt werden',
    tooManyTries: (wait) => `zu viele falsche Codes; warte ${wait}, oder nimm den Link des QR-Codes`,
    noCode: 'diesen Code gibt es nicht oder er ist abgelaufen; lies ihn noch einmal, oder mach einen neuen',
    noCodeWait: (wait) =>
      `diesen Code gibt es nicht oder er ist abgelaufen; lies ihn noch einmal, oder mach einen neuen; warte dann ${wait}`,
    seconds: (n) => `${f.count(n, { one: 'Sekunde', other: 'Sekunden' })}`,
    minutes: (n) => `${f.count(n, { one: 'Minute', other: 'Minuten' })}`,
    deviceName: 'schreibe Buchstaben und Ziffern in einer Zeile',
    throughProxy: 'das kam über einen Proxy, und nur dieser Computer kommt herein; starte mit --behind-proxy',
    notPaired: 'dieses Gerät ist nicht gekoppelt; kopple es mit einem Code von einem gekoppelten Gerät',
    foreignHost: (host) =>
      `unter „${host}“ ist hier nichts; nimm http://localhost, --lan für das Heimnetz, oder füge mit --name einen Namen hinzu`,
    foreignPage: (origin) => `Seiten von ${origin} dürfen hier nicht herein`,
    noOrigin: 'eine Seite, die schreibt, muss sagen, woher sie ist (Origin)',
    fromElsewhere: 'fremde Seiten dürfen hier nicht herein',
    sendJson: (why) => `${why}; sende JSON`,
    serverFailed: 'auf dem Server ging etwas schief, es wurde nichts geschrieben; sein Protokoll sagt mehr',
    unknownAddress: (what) => `${what} gibt es nicht; siehe /api/openapi.json`,
    bodyTooLarge: (megabytes) => `der Inhalt ist größer als ${f.number(megabytes)} MB; sende weniger`,
    bodyTooDeep: (most) => `der Inhalt ist mehr als ${f.number(most)}-mal verschachtelt; prüfe die Klammern`,
    noVersion: 'sag, was du änderst: If-Match mit der gesehenen Version, oder If-None-Match: * für Neues',
    otherAddress: (id, address) => `/id ist „${id}“, die Adresse sagt aber „${address}“; mache beide gleich`,
  },
  rescue: {
    damaged: 'Die Haushaltsdatei ist beschädigt',
    replaced: 'Die Haushaltsdatei wurde ersetzt',
    gone: 'Die Haushaltsdatei ist weg',
    foreign: 'Die Haushaltsdatei lässt sich nicht lesen',
    empty: 'Die Haushaltsdatei ist leer',
    other: 'Der Haushalt lässt sich nicht öffnen',
    intro:
      'Es wurde nichts hineingeschrieben. Wähle, wie es weitergeht; die Datei bleibt so, wie sie ist, unter einem anderen Namen daneben erhalten.',
    didNotHelp: 'Das hat nicht geholfen:',
    noLonger: 'das geht nicht mehr',
    done: 'Erledigt',
    open: 'Pouchful öffnen',
    backups: 'Sicherungen',
    noBackup: 'Es gibt keine vollständige Sicherung.',
    goBackTitle: 'Auf eine Sicherung zurückgehen',
    goBackText: 'Was danach geändert wurde, ist nicht darin.',
    newest: (when) => `Auf die neueste zurückgehen: ${when} UTC`,
    goBack: (when) => `Zurückgehen: ${when} UTC`,
    saveTitle: 'Retten, was lesbar ist',
    saveText: 'Liest die Datei Stück für Stück und legt alles, was heil ist, in eine neue.',
    saveIf: 'Wenn die neueste Sicherung nicht neu genug ist, versuche das.',
    asItIsTitle: 'Die Datei so nehmen, wie sie jetzt ist',
    asItIsText:
      'Hier wurde eine Kopie abgelegt, während das Protokoll der früheren Datei noch daneben lag. Das Protokoll wird beiseite gelegt, damit es die Kopie nicht rückgängig macht.',
    withLogTitle: 'Hat niemand hier eine Kopie abgelegt?',
    withLogText:
      'Dann gehören Datei und Protokoll zusammen, und die neuesten Änderungen stehen im Protokoll.',
    withLog: 'Datei und Protokoll zusammen nehmen',
    anewTitle: 'Neu beginnen',
    anewText: 'Beginnt einen leeren Haushalt. Sicherungen bleiben, wo sie sind.',
    anew: 'Einen leeren Haushalt beginnen',
    found: 'Was gefunden wurde',
  },
});
