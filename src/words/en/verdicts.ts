import { endExposure, testAnswerSaying } from '../../core/hardware/hardware-saying.ts'
import type { SeenKind, Severity, Stated } from '../../core/hardware/hardware-sheet.ts'
import type { Rated } from '../../core/hardware/severity.ts'
import type { RemedyStep } from '../../core/verdicts/remedy.ts'
import { type MeasuredValue, measuredValue, type VerdictSaying } from '../../core/verdicts/saying.ts'
import type { Acceptance, FoundPart, Measured, MissingReading } from '../../core/verdicts/verdict.ts'
import { lowerFirst } from '../lower-first.ts'
import type { Print, Printers } from '../print.ts'

type Sayings = Exclude<VerdictSaying, RemedyStep | { readonly kind: 'remedy' } | Acceptance>

/** Why verdicts are what they are, and what is found. */
export const verdicts: Printers<Sayings> = {
  measured: measuredReason,
  'measured value': valueText,
  side: ({ side }) => (side === 'away' ? 'away from traffic' : 'toward traffic'),
  'verdicts at place': ({ place, worst, count, applying }, print) =>
    `${print.say(place)}: ${worst === 'does not apply' ? worst : `${worst}, ${count} of ${applying}`}`,
  verdict: ({ word }) => word,
  'fails at': ({ places }, print) => `Fails at: ${places.map(print.say).join('; ')}.`,
  chosen: ({ label }, print) => print.say(label),
  confirmed: ({ yes }) => (yes ? 'confirmed' : 'not confirmed'),
  'nobody looked': () => 'no reading',
  'could not be seen': () => 'could not be seen',
  'set aside': ({ by, because }, print) => `set aside by ${print.theirs(by)}: ${print.theirs(because)}`,
  'may not be set aside': ({ by, because }, print) =>
    `set aside by ${print.theirs(by)}, which the sheet does not allow: ${print.theirs(because)}`,
  'readings missing': ({ missing }) =>
    `no direct reading, and these are missing to compute it: ${missing.map(missingText).join(', ')}`,
  'answer of another kind': ({ expected }) => `the reading gives no ${expected}`,
  'no limit stated': () => 'the sheet states no limit',
  'side not stated': () => 'side not stated: whether it lies away from traffic or toward it',
  criteria: ({ hardware, at, answer }, print) => print.say(testAnswerSaying(hardware, at, answer)),
  crashworthy: ({ sheet, exposure }, print) => print.say(endExposure(sheet, exposure)),
  seen: ({ what }) => seenWords[what],
  'how bad': ({ severity }) => severityWords[severity],
  severity: ({ rated }) =>
    rated === 'notStated' ? severityWords.notStated : `${severityWords[rated.severity]}${onWord[rated.by]}`,
  'not said': ({ what }) => notSaid[what],
  'need of run': ({ shortAtFirst, shortAtSecond }, print) => {
    const short = (
      [
        ['first', shortAtFirst],
        ['second', shortAtSecond],
      ] as const
    ).flatMap(([end, inches]) =>
      inches === null || inches === 0 ? [] : [`${print.feetInches(inches)} short at the ${end} end`],
    )
    if (short.length > 0) return print.list(short, 'and')
    return shortAtFirst === null || shortAtSecond === null
      ? 'not known from where the rail counts'
      : 'covered at both ends'
  },
  'unit joins another system': ({ unit, system }, print) =>
    `${lowerFirst(print.say(unit))} at ${lowerFirst(print.say(system))}`,
  'too few pieces': ({ of, counted, wanted }) => `${counted} ${of} counted, ${wanted} asked for`,
  'site check': ({ check }, print) => `${print.say(check.value)}, as the site had it when the run was made`,
  counted: ({ label }, print) => `counted: ${lowerFirst(print.say(label))}`,
  'measured at the count': ({ value, unit }, print) => `${print.measured(value, unit)}, measured at the count`,
  'not rechecked': () => 'failed, and was read again, but not as a recheck of the finding that proves it put right',

  correction: ({ names }) => `corrects ${names}, without effect: that is no earlier reading of the same thing`,
  'setting aside': ({ names }) => `sets ${names} aside, without effect: that may not be set aside`,
  recheck: ({ names }) => `rechecks ${names}, without effect: this reading cannot prove that finding put right`,

  found: ({ parts }, print) =>
    `Found: ${print.say({ kind: 'what was found', parts })} Must be: ${print.say({ kind: 'what must be', parts })}`,
  'what was found': ({ parts }, print) => parts.map((part) => `${foundText(part, print)}.`).join(' '),
  'what must be': ({ parts }, print) => parts.map((part) => mustText(part, print)).join(' '),
}

function missingText({ of, post, what }: MissingReading): string {
  if (post === null) return of
  return what === 'along' ? `post ${post} along the rail` : `the offset of post ${post}`
}

const seenWords: Readonly<Record<SeenKind, string>> = {
  hit: 'hit by a vehicle',
  'missing part': 'a part is missing',
  erosion: 'ground washed out',
  debris: 'debris',
  growth: 'growth',
  'missing delineator': 'delineator missing',
  other: 'something else',
}

const severityWords: Readonly<Record<Stated<Severity>, string>> = {
  'lets it fail': 'can let it fail when it is struck',
  'weakens it': 'weakens it',
  upkeep: 'upkeep',
  notStated: 'how bad is not stated by the sheet, so taken as the worst',
}

const onWord: Readonly<Record<Rated['by'], string>> = {
  published: '',
  'common practice': '',
  'from memory': ' (from memory, unconfirmed)',
  'its finder': ' (by the word of its finder)',
}

const notSaid = {
  need: 'what has to be shielded was not said, or not the whole run was looked at: nothing here proves shielding',
  'rest of run': 'nobody looked at the rest of the run, nor at its length',
  location: 'neither the station nor the position of the run was said',
  'end hardware': 'not known which hardware ends the run: nothing of it was checked',
} as const

/** What it is, as it was read. */
function foundText(part: FoundPart, print: Print): string {
  switch (part.kind) {
    case 'against a rule':
      return print.say(part.because)
    case 'posts out of place': {
      const { from, to, by, unit, because } = part
      const posts = from === to ? `post ${from} stands` : `posts ${from} to ${to} stand`
      return `${posts} ${print.measured(by, unit)} out of place: ${because.map(print.say).join(', then ')}`
    }
    case 'panels and splices': {
      const { panels, splices } = part
      const said = panels.map(({ place, because }) => `${print.say(place)}: ${print.say(because)}`)
      if (splices.length > 0) said.push(`splice${splices.length > 1 ? 's' : ''} ${splices.join(', ')} out of place`)
      return said.join('; ')
    }
  }
}

/** What it has to be instead. */
function mustText(part: FoundPart, print: Print): string {
  switch (part.kind) {
    case 'against a rule':
      return print.say(part.must)
    case 'posts out of place':
      return 'Every post stands where the layout has it.'
    case 'panels and splices':
      return 'Every panel is of the length that the layout gives, and every splice lies where it belongs.'
  }
}

/** `28 1/2 in, 1 1/2 in outside the limit; ± 0.24 in (k = 2); probability of conformity under 0.1 %` */
function measuredReason(because: Measured, print: Print): string {
  const { unit, margin, uncertainty, guard, probability, computed } = because
  const far = print.measured(Math.abs(margin), unit)
  const side = margin < 0 ? `${far} outside the limit` : margin === 0 ? 'on the limit' : `${far} inside the limit`
  const rule = guard > 0 && Math.abs(margin) < guard ? ', within the guard band' : ''
  const percent = probability > 0.999 ? 'over 99.9' : probability < 0.001 ? 'under 0.1' : (probability * 100).toFixed(1)
  const how = computed ? 'computed ' : ''
  const either = because.side === 'not stated' ? ' on either side' : ''
  const doubt = `± ${print.decimal(2 * uncertainty, unit)} (k = 2)`
  return `${how}${print.say(measuredValue(because))}, ${side}${rule}${either}; ${doubt}; probability of conformity ${percent} %`
}

/** `48 in away from traffic` */
function valueText({ value, unit, side }: MeasuredValue, print: Print): string {
  if (side === undefined || value === 0) return print.measured(value, unit)
  const size = print.measured(Math.abs(value), unit)
  if (side === 'not stated') return `${size}, side not stated`
  return `${size} ${print.say({ kind: 'side', side: value < 0 ? 'toward' : 'away' })}`
}
