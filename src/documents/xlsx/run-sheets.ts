import { setAsideIn } from '../../core/verdicts/set-aside.ts'
import type { EntryOf, PhotoBody } from '../../formats/entry/entry-kinds.ts'
import type { NamedAssignment } from '../assignment-text.ts'
import type { QuantitiesContents } from '../quantities-contents.ts'
import type { RecordInput } from '../record-input.ts'
import { runFacts, sheetLines } from '../run-facts.ts'
import type { StakeListContents } from '../stake-list-contents.ts'
import { type VersionMade, versionReasons } from '../version-reasons.ts'
import { documentWords } from '../words/document-words.ts'
import { panelsSheet, postsSheet, stakesSheet } from './piece-sheets.ts'
import { materialsSheet, quantitiesSheet } from './quantity-sheets.ts'
import { askedEarlierSheet, findingsSheet, readingsSheet, requirementsSheet } from './reading-sheets.ts'
import { type Cell, column, type Sheet } from './sheet.ts'

/** What was recorded at the run besides readings. */
interface RunSheetsSide {
  readonly photos: readonly EntryOf<PhotoBody>[]
  readonly versions: readonly VersionMade[]
  /** Who sees to which finding, in the order that counts. */
  readonly assignments: readonly NamedAssignment[]
}

/**
 * Everything of a run as sheets of a workbook; stakes only where the run was placed on its road, what an earlier version
 * asked only where there is any.
 */
export function runSheets(
  input: RecordInput,
  stakes: StakeListContents | null,
  quantities: QuantitiesContents,
  { photos, versions, assignments }: RunSheetsSide,
): readonly Sheet[] {
  const { print } = input
  const earlier = askedEarlierSheet(input, photos)
  return [
    factsSheet(input, versions),
    postsSheet(input),
    panelsSheet(input),
    ...(stakes === null ? [] : [stakesSheet(stakes, print)]),
    quantitiesSheet(quantities, print),
    materialsSheet(quantities, print),
    requirementsSheet(input),
    readingsSheet(input),
    ...(earlier.rows.length === 0 ? [] : [earlier]),
    findingsSheet(input, assignments),
  ]
}

function factsSheet(input: RecordInput, versions: readonly VersionMade[]): Sheet {
  const { run, judgement, print } = input
  const words = documentWords(print).workbook.facts
  const rows: Cell[][] = [
    [words.run, print.theirs(run.name)],
    ...runFacts(input).map(({ name, value }): Cell[] => [name, value]),
    ...sheetLines(input).map(({ role, name, id, version, criteria }): Cell[] => [
      role,
      [name, id === '' ? '' : words.sheet(id, version), criteria].filter((text) => text !== '').join('; '),
    ]),
    ...versionReasons(run, versions, print).map((reason): Cell[] => [words.versionReason, reason]),
    [words.acceptance, print.say(judgement.acceptance)],
    ...setAsideIn(judgement.verdicts).map(({ requirement, by, because }): Cell[] => [
      words.setAside,
      words.setAsideBy(requirement, print.theirs(by), print.theirs(because)),
    ]),
  ]
  return { name: words.name, page: 'portrait', columns: [column(words.fact, 28), column(words.value, 70)], rows }
}
