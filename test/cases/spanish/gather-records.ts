import { exposureText, neededEndText } from '../../../src/core/hardware/crashworthy-end.ts'
import { neededTestName, neededTestText, testReason } from '../../../src/core/hardware/test-text.ts'
import { findTest, type Speed, type WorkAtHand } from '../../../src/core/hardware/tested-criteria.ts'
import { shippedSheets } from '../../../src/sheets/shipped-sheets.ts'

const speeds: readonly (Speed | null)[] = [null, { value: 45, unit: 'mi/h' }, { value: 110, unit: 'km/h' }]

const works: readonly WorkAtHand[] = ([null, 'new', 'standing'] as const).flatMap((work) =>
  [null, '2016-01-15', '2024-01-15'].flatMap((letting) => speeds.map((speed) => ({ work, letting, speed }))),
)

/** What the run file and the sheets decide, with each of its answers. */
export function textsOfRecords(): string[] {
  const tests = shippedSheets.flatMap((sheet) =>
    [sheet.criteria, sheet.criteria.map((one) => ({ ...one, testLevel: 2 })), []].flatMap((criteria) =>
      works.flatMap((at) => {
        const hardware = { category: sheet.category, criteria }
        return [
          testReason(hardware, at, findTest(hardware, at)),
          neededTestText(hardware, at),
          `Choose hardware with ${neededTestName(hardware, at)}.`,
        ]
      }),
    ),
  )
  const ends = shippedSheets.flatMap((sheet) =>
    sheet.kind === 'longitudinal'
      ? []
      : ([true, false, null] as const).flatMap((opposingReaches) =>
          (['approach', 'departure'] as const).flatMap((end) => [
            exposureText(sheet, { end, opposingReaches }),
            neededEndText({ end, opposingReaches }),
          ]),
        ),
  )
  return [...tests, ...ends]
}
