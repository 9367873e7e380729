/** What the server refuses, and its pages while the household cannot be opened. */
import type { Figures } from '../figures.ts';

export const access = (f: Figures) => ({
  refusal: {
    fileTooLarge: (megabytes: number) =>
      `the file is over ${f.number(megabytes)} MB, the most that is taken in; go back to a backup instead, or delete what is old before it is saved`,
    fileRefused: 'it cannot be taken in',
    notAsLookedAt: 'the file or the household is another than was looked at; look again at what would change',
    tooManyDevices: (most: number) =>
      `this household has ${f.number(most)} devices; remove one that is no longer used`,
    noDevice: 'no such device; it may have been removed already',
    onlyThisMachine: 'only this machine is served; start with --lan to let other devices in',
    nothingToPair: 'this server is open to its own machine alone; nothing needs pairing there',
    tooManyTries: (wait: string) => `too many wrong codes; wait ${wait}, or use the link of the QR code`,
    noCode: 'no such code, or it has expired; read it again, or make a new one',
    noCodeWait: (wait: string) =>
      `no such code, or it has expired; read it again, or make a new one; then wait ${wait}`,
    seconds: (n: number) => `${f.count(n, { one: 'second', other: 'seconds' })}`,
    minutes: (n: number) => `${f.count(n, { one: 'minute', other: 'minutes' })}`,
    deviceName: 'write letters and numbers, in one line',
    throughProxy: 'this came through a proxy, and only this machine is served; start with --behind-proxy',
    notPaired: 'this device is not paired; pair it with a code from a paired device',
    foreignHost: (host: string) =>
      `host "${host}" is not served here; use http://localhost, --lan for the home network, or add a name with --name`,
    foreignPage: (origin: string) => `pages from ${origin} may not come in here`,
    noOrigin: 'a page that writes must say where it is from (Origin)',
    fromElsewhere: 'pages from elsewhere may not come in here',
    sendJson: (why: string) => `${why}; send JSON`,
    serverFailed: 'something failed on the server and nothing was written; its log says more',
    unknownAddress: (what: string) => `${what} is not known; see /api/openapi.json`,
    bodyTooLarge: (megabytes: number) => `the body is over ${f.number(megabytes)} MB; send less`,
    bodyTooDeep: (most: number) => `the body is nested more than ${f.number(most)} deep; check its brackets`,
    noVersion:
      'say what you change: If-Match with the version that you saw, or If-None-Match: * for a new one',
    otherAddress: (id: string, address: string) =>
      `/id is "${id}" but the address says "${address}"; make them the same`,
  },
  rescue: {
    damaged: 'The household file is damaged',
    replaced: 'The household file was replaced',
    gone: 'The household file is gone',
    foreign: 'The household file cannot be read',
    empty: 'The household file is empty',
    other: 'The household cannot be opened',
    intro:
      'Nothing was written to it. Choose how to go on; the file as it is now is kept beside it under another name.',
    didNotHelp: 'That did not help:',
    noLonger: 'this is no longer possible',
    done: 'Done',
    open: 'Open Pouchful',
    backups: 'Backups',
    noBackup: 'There is no backup that is whole.',
    goBackTitle: 'Go back to a backup',
    goBackText: 'What was changed after it is not in it.',
    newest: (when: string) => `Go back to the newest: ${when} UTC`,
    goBack: (when: string) => `Go back: ${when} UTC`,
    saveTitle: 'Save what can be read',
    saveText: 'Reads the file piece by piece and puts all that is whole into a new one.',
    saveIf: 'Where the newest backup is not new enough, try this.',
    asItIsTitle: 'Use the file as it is now',
    asItIsText:
      'A copy was put here while the log of the file before it still lay beside it. The log is set aside, so that it cannot undo the copy.',
    withLogTitle: 'Nobody put a copy here?',
    withLogText: 'Then file and log belong together, and the newest changes are in the log.',
    withLog: 'Use file and log together',
    anewTitle: 'Begin anew',
    anewText: 'Starts an empty household. Backups stay where they are.',
    anew: 'Begin an empty household',
    found: 'What was found',
  },
});

export type Access = ReturnType<typeof access>;
