/** What this device says of its store, of sending and of new versions, in English. */
export const en = {
  files: { run: 'stored run', readings: 'stored readings' },
  trouble: {
    unreachable: 'The server did not answer. What you recorded is kept on this device and will be sent later.',
    neverSynced: 'This device has not fetched anything yet, and the server did not answer.',
    answered: (status: number) => `The server answered with status ${status}.`,
    notLetIn: 'The server does not let this device in yet, or shut it out. What you recorded is kept on this device.',
    plainLine:
      'This address is not encrypted: the page only shows what the server has, keeps nothing without a network, and takes no entry. Open the address that begins with https; whoever runs the server can say how (npm start -- --lan).',
    plainCopy:
      'This address is not encrypted, so the browser keeps nothing for this page, and it takes no entry. Whoever publishes it can serve it under an address that begins with https.',
    mereTab:
      'This is a tab of the browser. On this device the page on the home screen keeps its data apart: put Lapwise on the home screen first and enter readings there. What is entered here stays here.',
    runUnreadable: 'This page cannot read a run that is kept here.',
    readingsUnreadable: 'This page cannot read readings that are kept here.',
    newerFile: (file: string, version: number) =>
      `${file} was made by a newer program, in version ${version} of its format. It is kept on this device: fetch a newer page where there is a network, then try it again.`,
    notHeld: 'That file is no longer kept on this device.',
    noSuchRun: (id: string) => `There is no run ${id}.`,
    noRoom: 'This device has no room left for it. What was saved before is kept.',
    noRoomForPhoto:
      'This device has no room left for the photo. Your readings are kept; free some room and take it again.',
    store: (reason: string) =>
      `The store of this device cannot be used: ${reason}. What was saved before is still there.`,
    gone: 'What this device had kept was deleted while the page was open, by the browser or by somebody: this is not saved. What had reached the server is there. Note down what you just entered, load the page again and enter it once more.',
    madeByServer: 'Documents are made by the server, which did not answer. They can be made later; nothing is lost.',
    notSet: (reason: string) => `The document could not be set: ${reason}`,
    needsSending: 'Some entries of this run have not reached the server yet, so the documents would lack them.',
    notDeviceFile: (file: string) => `${file} is no file from a device that can be used.`,
    notRunFile: (file: string) => `${file} is not a run file that can be used.`,
    notSheetFile: (file: string) => `${file} is not a hardware sheet that can be used.`,
    editionTaken: (id: string, version: string) =>
      `Edition ${version} of the sheet ${id} is on the shelf already and says something else. A sheet that was changed needs a version of its own.`,
    cannotLayOut: (file: string) => `The run in ${file} cannot be laid out.`,
    otherVersion: 'Another version of this run came in meanwhile. Open the edit again: it then begins from that one.',
    noVersion: 'This is no version of the run that can be kept.',
    part: 'A part of this page is not on this device yet and could not be fetched.',
    left: 'The page was left before this was done. Try again.',
  },
  status: {
    label: 'This device',
    saved: 'All is on the server',
    unsent: (n: number, since: string) =>
      `${n === 1 ? '1 entry is' : `${n} entries are`} on this device only, since ${since}`,
    onlyHere: (n: number, since: string) => `${n === 1 ? '1 entry' : `${n} entries`} only here since ${since}`,
    photosOnlyHere: (n: number) => `${n === 1 ? '1 photo' : `${n} photos`} only here`,
    photos: (n: number) => (n === 1 ? '1 photo is on this device only' : `${n} photos are on this device only`),
    refused: (n: number) => (n === 1 ? '1 entry was refused by the server' : `${n} entries were refused by the server`),
    refusedOne: (kind: string, reason: string) => `${kind}: ${reason}`,
    moved: 'The server has another address now? Bring this over',
    syncing: 'Sending and fetching …',
    letIn: 'Let this device in',
    sync: 'Send and fetch now',
    last: (time: string) => `Last sent and fetched ${time}`,
    never: 'Never sent or fetched yet',
    persisted: 'The browser promised to keep what is here.',
    notPersisted: 'The browser may delete what is here when it runs out of room: send soon.',
    room: (used: string, quota: string) => `${used} of ${quota} in use`,
    free: (photos: number, size: string) =>
      `Free room: ${photos === 1 ? '1 photo' : `${photos} photos`}, ${size}, already on the server`,
    freed: (photos: number, size: string) =>
      `${photos === 1 ? '1 photo' : `${photos} photos`}, ${size}, are on the server only now, and are fetched when they are shown.`,
    noServer: 'This copy has no server: what is recorded stays on this device until a file of it is handed on.',
    kept: (n: number, photos: number) =>
      `${n === 1 ? '1 entry' : `${n} entries`} and ${photos === 1 ? '1 photo' : `${photos} photos`} kept here`,
    saveSoon: 'The browser may delete what is here when it runs out of room: save a file soon.',
    restOf: (file: string) => `rest-of-${file}`,
    more: 'More about this device',
  },
  update: {
    ready: 'A new version is ready.',
    take: 'Take it over',
    held: 'A new version is ready. It waits until what you entered is saved, here and in other tabs.',
    tookOver: 'Another tab took over a new version. This one follows as soon as what you entered is saved.',
  },
}

export type DeviceMessages = typeof en
