import type { EntryKind } from '../../formats/entry/entry-kinds.ts'

const of = (one: string, many: string) => (n: number) => (n === 1 ? `1 ${one}` : `${n} ${many}`)

/** Entries of each kind, counted. */
const kinds: Readonly<Record<EntryKind, (n: number) => string>> = {
  run: of('version of a run', 'versions of runs'),
  reading: of('reading', 'readings'),
  photo: of('photo', 'photos'),
  'photo-strokes': of('drawing on a photo', 'drawings on photos'),
  'sign-off': of('signature', 'signatures'),
  'day-log': of('day log', 'day logs'),
  'locate-ticket': of('locate ticket', 'locate tickets'),
  archive: of('note that a run was put away or brought back', 'notes that runs were put away or brought back'),
  'free-finding': of('finding beside the requirements', 'findings beside the requirements'),
  'free-finding-end': of('finding closed', 'findings closed'),
  assignment: of('assignment', 'assignments'),
}

/** What is said of files that go from device to device, in English. */
export const filesEn = {
  bring: {
    title: 'Bring over what was recorded elsewhere',
    why: 'Each address keeps a store of its own on a device. On an iPhone, so do the browser and the installed app. When the address of the server has changed, or the app was installed later, what was recorded before lies in the other store, and goes over as one file.',
    there: 'First, where it was recorded: at the old address, or in the browser',
    thereHow:
      'Open this page there (it opens without the server), save everything to a file, and leave the store as it is.',
    unsent: (n: number, photos: number) =>
      `At this address ${n === 1 ? '1 entry' : `${n} entries`} and ${photos === 1 ? '1 photo' : `${photos} photos`} are on this device only.`,
    allSent: 'At this address nothing is on this device only: nothing has to be brought over from here.',
    here: 'Then here, at the new address or in the installed app: take the file in',
    hereHow: 'What it would change is shown first. What is here already stays, so it may be taken in twice.',
  },
  documents: {
    how: 'Made on this device. What sets it (12 MB) is fetched with the first document and kept: from then on it needs no network.',
    language: 'In',
    make: {
      record: 'Make the record',
      summary: 'Make the summary of two pages',
      'crew-sheet': 'Make the crew sheet',
    },
    making: 'Making the document …',
    made: (file: string) => `${file} is made.`,
    notMade: 'The document was not made.',
    archive:
      'These PDFs are tagged and carry their letters, but are not marked for archives (PDF/A), and hold no photos. The archival record and the packet come from the file below: a server that takes it in makes them.',
  },
  title: 'Files in and out',
  take: 'Take in a file from a device',
  handOver: 'Hand over this run',
  handOverHow:
    'The run with everything recorded at it, photos too, in one file: for another phone or the office, without a server.',
  handOverAll: 'Save everything to a file',
  making: 'Making the file …',
  made: (size: string) => `The file is made: ${size}.`,
  lacks: (n: number) =>
    n === 1
      ? 'The picture of 1 photo is neither on this device nor to be had from the server now, and so not in the file:'
      : `The pictures of ${n} photos are neither on this device nor to be had from the server now, and so not in the file:`,
  lacksThere: (n: number) =>
    n === 1
      ? 'It tells of 1 photo whose picture is neither in it nor here:'
      : `It tells of ${n} photos whose pictures are neither in it nor here:`,
  share: 'Share it',
  saveFile: 'Save it',
  notShared: 'It could not be shared here. Save it, and send the file.',
  notMade: 'The file was not made.',
  rescue: 'If that does not work: save what can be read',
  looking: (file: string) => `Looking at ${file} …`,
  failed: 'The file was not taken in.',
  brings: (file: string) => `${file} would bring:`,
  nothing: (file: string) => `${file} brings nothing that is not here already.`,
  newRun: (name: string) => `${name}: new here`,
  knownRun: (name: string) => `${name}: here already`,
  unnamedRun: 'a run that is neither here nor in the file',
  kinds,
  pictures: (n: number) => (n === 1 ? 'the picture of 1 photo' : `the pictures of ${n} photos`),
  already: (n: number) => `${n} here already, left as they are`,
  merge: 'Take it in',
  drop: 'Do not take it in',
  merging: 'Taking it in …',
  taken: (entries: number, photos: number, already: number) =>
    `Taken in: ${entries} entries, ${photos} photos; ${already} were here already.`,
  willLeave: (n: number) => (n === 1 ? '1 part of it cannot be taken in:' : `${n} parts of it cannot be taken in:`),
  left: (n: number) =>
    n === 1
      ? '1 part of it was not taken in. It is kept on this device, beside the rest:'
      : `${n} parts of it were not taken in. They are kept on this device, beside the rest:`,
  leftEntry: (kind: string, by: string, at: string) => `${kind}, ${by}, ${at}`,
  leftOther: 'an entry that cannot be told',
  leftPhoto: (hash: string) => `photo ${hash}`,
  problem: (place: string, expected: string, found: string) => `${place}: expected ${expected}, found ${found}`,
  more: (n: number) => `and ${n} more`,
  held: 'Kept here, not taken in',
  heldNewer: (file: string, version: number) =>
    `${file}: made by a newer program, in version ${version} of its format. It needs a newer page: fetch one where there is a network, then try it again.`,
  heldRest: (file: string, n: number) =>
    `${file}: ${n === 1 ? '1 part' : `${n} parts`} of a file, which could not be taken in`,
  heldSize: (size: string, at: string) => `${size}, since ${at}`,
  again: 'Try it again',
  saveHeld: 'Save it to a file',
  dropHeld: 'Delete it',
  sureDrop: 'Really delete it: nothing else has it',
  sheets: {
    title: 'Hardware sheets of this device',
    how: 'A sheet that describes hardware of your own, or another edition of one that is here, joins the shelf of this device. A run takes in what it uses: later changes of the shelf do not reach it.',
    add: 'Put a sheet on the shelf from its file',
    added: (file: string) => `${file} is on the shelf.`,
    already: (file: string) => `${file} was on the shelf already.`,
    notAdded: (file: string) => `${file} was not put on the shelf.`,
    edition: (version: string) => `edition ${version}`,
    unreadable: 'It is kept here, but this page cannot read it:',
    drop: 'Take it off the shelf',
    sureDrop: 'Really take it off: runs that use it keep it',
    notDropped: 'It was not taken off the shelf.',
  },
}

export type FilesWords = typeof filesEn
