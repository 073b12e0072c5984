import type { Acceptance } from '../../../core/verdicts/verdict.ts'

/** How many requirements stand where, for what an acceptance means. */
interface Counts {
  readonly fails: number
  readonly unrechecked: number
  /** Too close or unread. */
  readonly open: number
  readonly doesNotApply: number
  /** Free findings that stand, and those of them that can let the hardware fail. */
  readonly seen: number
  readonly grave: number
}

const some = (number: number): string => `${number} requirement${number === 1 ? '' : 's'}`

/** The inspection record. What stands in braces is put in where the page is set. */
export const record = {
  title: 'Inspection record',
  means: (kind: Acceptance['kind'], counts: Counts): string => [rulesMean(kind, counts), ...seenMean(counts)].join(' '),
  notAllRead: 'no reading, and not all of those from which it could be computed',
  signatures: ['Contractor', 'Inspector', 'Engineer'],
  hashOf: 'SHA-256, by rule 2, of run, layout, sheets in use, readings, photos and decision rule as canonical JSON',
  setAside: 'Set aside: taken out of judging by a named person, with a reason',
  place: 'Place',
  requirement: 'Requirement',
  because: 'Because',
  setAsideBy: 'Set aside by',
  requirements: '{count} requirements',
  atNumbers: 'requirement no. {numbers}',
  sheets: 'Hardware sheets that it is judged by',
  part: 'Part of the run',
  sheet: 'Sheet',
  criteria: 'Test criteria',
  notice: 'Notice',
  version: '{id}, version {version}',
  decisionRule: 'Decision rule.',
  findings: 'Findings',
  none: 'None.',
  number: 'No.',
  found: 'What was found',
  remedy: 'What to do',
  foundIs: 'Found:',
  mustBe: 'Must be:',
  fromPostOne: '{along} from post 1',
  freeFindings: 'Seen besides: free findings, which no requirement asks for',
  seen: 'What was seen',
  howBad: 'How bad',
  seenBy: 'By, at; closed',
  placeGone: 'at a place that this version of the run does not have',
  closedAs: { 'put right': 'put right by', 'not so': 'not so, by' },
  assigned: (owner: string | null, due: string | null): string =>
    [...(owner === null ? [] : [`seen to by ${owner}`]), ...(due === null ? [] : [`due ${due}`])].join(', '),
  rechecks: 'Rechecks',
  finding: 'Finding',
  reading: 'Reading',
  byAt: 'By, at',
  now: 'Now',
  readingOf: '{id}, of {of}',
  unproven: 'What is not proven',
  allProven: 'Nothing: every requirement is read and decided.',
  onMemory: (count: number): string =>
    `${count === 1 ? 'One verdict rests on a limit' : `${count} verdicts rest on limits`} from memory, which nobody has confirmed: see “Limits that nobody has confirmed”.`,
  why: 'Why it is not proven',
  strip: 'The run as a strip',
  nextPage:
    'The next page shows the run to scale; the scale and a bar to check the print stand on each. Print at 100 %, not fitted to the page.',
  nextPages:
    'The next {count} pages show the run to scale; the scale and a bar to check the print stand on each. Print at 100 %, not fitted to the page.',
  photo: 'Photo {number}',
  photoInText: 'photo {number}',
  absent: '(not in this packet)',
  morePhotos: 'and photos {numbers}',
  corrects: '; corrects {id}',
  together: 'taken in one go for several places ({name})',
  noReading: 'no reading',
  by: '{id}, by {sheet}, source {source}, {confirmation}',
  limit: 'Limit',
  verdict: 'Verdict',
  holdPoints: 'Hold points: what later work covers',
  inOrder: 'Requirements in walking order',
  of: 'Of',
  value: 'Value',
  instrument: 'Instrument, where',
  measured: 'Readings from which values are computed',
  photos: 'Photos',
  photoUnknown: 'SHA-256 not known: it was not at hand',
  photosHashOf: 'SHA-256 of the list of photos with the SHA-256 of each, which the manifest repeats as photosHash',
  photoAbsent: 'This photo is not in this packet.',
  named: (at: string, by: string) => `named in a reading of ${at} by ${by}`,
  theRun: 'the run',
  shows: (number: number, place: string, must: string) => `No. ${number}, ${place}: ${must}`,
  timeUnknown: 'time not known',
  drawnOn: (photo: string) => `drawn on ${photo}`,
  strokesBy: (by: string, at: string) => `marked by ${by}, ${at}`,
  replaced: 'Readings that no longer count',
  noneReplaced: 'None: no reading was corrected or taken again.',
  replacedBy: 'Replaced by',
  withoutEffect: 'Said without effect',
  withoutEffectHow: 'What stands in the last column counts for nothing; all else that these readings say counts.',
  versionReasons: 'Why the run was changed',
  versionReason: (number: number, because: string, by: string | null): string =>
    `Version ${number}: ${because}${by === null ? '' : ` (${by})`}`,
  askedEarlier: 'Asked by an earlier version',
  askedEarlierHow:
    'What an earlier version of the run asked and this one does not. It is kept as it was recorded, and judged by nothing.',
  askedWhy: '{why} (version {version})',
  whyNot: 'Why',
  photoHead: 'Photo',
  unconfirmed: 'Limits that nobody has confirmed',
  unconfirmedHow:
    'These limits come from memory. Check them against the document in force before relying on a verdict that rests on them.',
  sheetSource: 'Sheet, source',
  sourceNumber: '{sheet}, source {source}',
  sources: 'Sources of the limits',
  document: 'Document',
  edition: 'Edition',
  unusual: 'Unusual values',
  unusualHow: 'These were read as they stand and are seldom right. Look at each again.',
  cautions: 'Cautions',
  signed: 'Signed on a device',
  signedVersion: '(version {version})',
  typed: 'Signed by typing the name.',
  drawn: 'Drawn by hand.',
  signedAs: 'Signed as {state}, with {count} not proven.',
  standing: {
    same: 'The record that was signed is this one.',
    unknown: 'The record that was signed is ANOTHER ONE: not all that it took in is known to be in this one.',
    other:
      'The record that was signed is ANOTHER ONE: run, layout, sheets, readings, photos or decision rule were others.',
    earlier: (count: number) =>
      `The record that was signed is AN EARLIER ONE: ${count} reading${count === 1 ? ' was' : 's were'} added since.`,
  },
  signedHash: 'SHA-256 of the record that was signed:',
  signatureOf: (name: string) => `Signature of ${name}`,
  signatureTyped: (role: string) => `The name typed, as ${role}.`,
  signatureDrawn: (role: string) => `Drawn by hand, as ${role}.`,
  byHand: 'Signatures by hand',
  byHandHow: 'Who signs states that the record is the one whose hash stands below, and answers for the acceptance.',
  role: 'Role',
  name: 'Name, license where the law asks for one',
  signature: 'Signature',
  date: 'Date',
}

function rulesMean(kind: Acceptance['kind'], { fails, unrechecked, open, doesNotApply }: Counts): string {
  switch (kind) {
    case 'acceptable':
      return `Every requirement meets its limit${doesNotApply > 0 ? ', or does not apply by the run file' : ''}.`
    case 'acceptable except':
      return 'Every other requirement meets its limit. What is set aside stands below, with the reason and the name of who answers for it.'
    case 'not acceptable':
      return [
        ...(fails > 0 ? [`${some(fails)} not met: see the findings.`] : []),
        ...(unrechecked > 0 ? [`${some(unrechecked)} failed, reread but not as recheck of the finding.`] : []),
        ...(open > 0 ? [`${some(open)} not proven either way.`] : []),
      ].join(' ')
    case 'not yet known':
      return open === 0
        ? 'Nothing fails, but no reading proves anything.'
        : `Nothing fails, but ${some(open)} not proven.`
    default:
      return kind satisfies never
  }
}

const free = (number: number): string => `${number} free finding${number === 1 ? '' : 's'}`

const seenMean = ({ seen, grave }: Counts): readonly string[] => [
  ...(grave > 0
    ? [`${free(grave)} that can let the hardware fail: the run is not acceptable before they are closed.`]
    : []),
  ...(seen > grave ? [`${free(seen - grave)} of lesser weight stand beside the requirements.`] : []),
]
