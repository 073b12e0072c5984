import { shelfFormEn } from './shelf-form-en.ts'
import { shelfTextsEn } from './shelf-texts-en.ts'

/** The words of the shelf of hardware sheets in English. What the sheets say comes from the core. */
export const shelfEn = {
  title: 'Hardware sheets',
  how: 'A run takes the sheets that it is laid out by along with it: what changes here changes no run.',
  back: 'All hardware sheets',
  systems: 'Barriers',
  ends: 'End units',
  none: 'There is no such sheet at hand.',
  noOwn: 'The sheets of this device could not be read.',
  own: 'own',
  begun: 'changed, not saved',
  kinds: {
    longitudinal: 'barrier',
    terminal: 'terminal',
    'trailing anchor': 'trailing anchor',
    'buried end': 'buried end',
    'bridge end': 'bridge end',
  },
  rail: (limits: string) => `top of rail ${limits}`,
  edition: (version: string) => `edition ${version}`,
  notSaved: (version: string) => `edition ${version} with changes that are not saved yet`,
  confirmed: (n: number, all: number) => `${n} of ${all} confirmed`,
  confirmedHow:
    'Confirmed is a statement that somebody checked in a document, or that comes from one that is published. All others stand for what the agency has to check.',
  facts: {
    category: 'Class',
    joins: 'Joins',
    ends: 'Ends that join it',
    gating: 'Gating',
    energyAbsorbing: 'Energy-absorbing',
    crashworthy: 'Crashworthy',
  },
  groups: {
    rail: 'Rail, tests and laps',
    posts: 'Posts',
    panels: 'Panels',
    gaps: 'Post spacing, gaps and moved posts',
    length: 'Length, flare, ground and room',
    parts: 'Parts and their rules',
    judging: 'How faults are judged',
  },
  columns: { states: 'What it states', source: 'Source', requires: 'What is required by it' },
  unconfirmed: 'not confirmed: from memory',
  confirm: {
    begin: 'Confirm numbers from a document',
    end: 'Stop confirming',
    title: 'Document in hand',
    how: 'Say once which document you have before you. Then give the page of each statement that it confirms: it counts as published from then on. What the document says otherwise is not confirmed but changed.',
    document: 'Title',
    edition: 'Edition',
    by: 'Your name',
    on: 'Date',
    page: 'Page',
    confirm: 'Confirm',
    missing: 'Say first which document, its edition, your name and the date.',
    checked: (by: string, page: string, on: string) => `page ${page}, checked by ${by}, ${on}`,
  },
  print: {
    open: 'Print',
    language: 'In',
    lengths: 'Lengths',
    units: { published: 'as published', us: 'in feet and inches', metric: 'metric' },
    of: {
      list: 'List to confirm, as PDF',
      'pocket-card': 'Pocket card, as PDF',
      'comparison-card': 'Comparison card, as PDF',
    },
    how: 'The pocket card has the checks in walking order, each with its right and wrong picture, on one sheet to fold; the list is for who has the manual in hand.',
    noSystem: 'No barrier that it joins is at hand, so that its checks cannot be laid out.',
    making: 'Making the PDF …',
    made: (file: string) => `${file} is made.`,
    notMade: 'The PDF was not made.',
  },
  save: {
    title: 'What saving does',
    begun: (version: string) =>
      `Changed from edition ${version}, on this device, and not saved. The edition that it came from stays as it is.`,
    isNew: 'A sheet of your own that is not saved yet.',
    version: 'Its edition',
    wrong: (n: number) =>
      n === 1 ? 'One thing has to be put right first.' : `${n} things have to be put right first.`,
    save: 'Save as an edition',
    notSaved: 'The edition was not saved.',
    drop: 'Drop the changes',
    sureDrop: 'Really drop them',
  },
  touched: {
    title: (n: number) =>
      n === 0
        ? 'No run on this device holds it'
        : n === 1
          ? '1 run on this device holds it'
          : `${n} runs on this device hold it`,
    how: 'None of them moves: each is judged by the edition that it holds, until somebody edits it and takes the shelf as it is then. What other devices hold is not known here.',
    unknown: 'The runs that hold it could not be read.',
    holds: (version: string) => `holds edition ${version}`,
    archived: 'put away',
    unsent: (n: number) => (n === 1 ? '1 entry not sent yet' : `${n} entries not sent yet`),
    tryOn: 'Try it on a copy',
    copyOf: (name: string, version: string) => `${name}, tried with edition ${version}`,
    notTried: 'It could not be tried.',
  },
  compare: {
    backTo: 'Back to the sheet',
    title: 'Compare',
    link: 'Compare with another sheet or edition',
    same: 'Both state the same.',
    what: 'Of what',
    kinds: {
      values: 'Other values',
      texts: 'Said in other words, or drawn or answered otherwise',
      source: 'The same from another source',
    },
    notThere: 'nothing stated',
    otherWords: 'in other words',
    besides: (what: string, one: string, other: string) => `${what}: ${one}; there ${other}`,
  },
  newer: {
    tag: 'a newer edition ships',
    ships: (now: string, from: string) =>
      `The program ships edition ${now} of the sheet that this one began from, which was edition ${from}. What is on the shelf of this device stays as it is.`,
    held: (n: number, all: number) =>
      all === 0
        ? 'Nothing was confirmed in this one.'
        : `${n} of ${all} confirmations hold there too, since the same is stated.`,
    begin: 'Begin an edition from it, with what was confirmed',
    compare: 'Compare with the newer edition',
    lost: (n: number) => `Confirmed before and no longer: ${n}`,
    lostHow: 'What is stated otherwise has to be confirmed anew in a document, or changed.',
  },
  editions: {
    title: 'Editions',
    shipped: 'ships with the program',
    onShelf: 'on the shelf',
    added: (when: string) => `put here ${when}`,
    save: 'Save as a file',
    compare: 'Compare',
  },
  form: shelfFormEn,
  texts: shelfTextsEn,
}

export type ShelfWords = typeof shelfEn
