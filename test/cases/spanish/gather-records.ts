import { endExposure, neededTestSaying, testAnswerSaying } from '../../../src/core/hardware/hardware-saying.ts'
import { findTest, neededTest, type Speed, type WorkAtHand } from '../../../src/core/hardware/tested-criteria.ts'
import { shippedSheets } from '../../../src/sheets/shipped-sheets.ts'
import type { Saying } from '../../../src/words/saying.ts'

const speeds: readonly (Speed | null)[] = [null, { value: 45, unit: 'mi/h' }, { value: 110, unit: 'km/h' }]

const works: readonly WorkAtHand[] = ([null, 'new', 'standing'] as const).flatMap((work) =>
  [null, '2016-01-15', '2024-01-15'].flatMap((letting) => speeds.map((speed) => ({ work, letting, speed }))),
)

/** What the run file and the sheets decide, with each of its answers. */
export function sayingsOfRecords(): Saying[] {
  const tests = shippedSheets.flatMap((sheet) =>
    [sheet.criteria, sheet.criteria.map((one) => ({ ...one, testLevel: 2 })), []].flatMap((criteria) =>
      works.flatMap((at) => {
        const hardware = { category: sheet.category, criteria }
        return [
          testAnswerSaying(hardware, at, findTest(hardware, at)),
          neededTestSaying(hardware, at),
          { kind: 'if it fails', of: 'criteria', needed: neededTest(sheet.category, at) } as const,
        ]
      }),
    ),
  )
  const ends = shippedSheets.flatMap((sheet) =>
    sheet.kind === 'longitudinal'
      ? []
      : ([true, false, null] as const).flatMap((opposingReaches) =>
          (['approach', 'departure'] as const).flatMap((end): Saying[] => [
            endExposure(sheet, { end, opposingReaches }),
            { kind: 'needed end', end },
          ]),
        ),
  )
  return [...tests, ...ends]
}
