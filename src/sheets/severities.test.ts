import { describe, expect, it } from 'vitest'
import { seenKinds } from '../core/hardware/hardware-sheet.ts'
import { severityOf, severityOfSeen, severityOfTopic } from '../core/hardware/severity.ts'
import { derivedTopics } from '../core/requirements/derived-topics.ts'
import { shippedSheets } from './shipped-sheets.ts'

/** What only an end unit can be asked. */
const ofEnds = ['hinge-side', 'slot-set', 'stub-height', 'flare-offset', 'slotted-panel']
/** What only the run between the ends can be asked. */
const ofRuns = ['curb', 'new-slot']

describe('the shelf says how bad a fault is', () => {
  it.each(shippedSheets.map((sheet) => [sheet.id, sheet] as const))(
    'whatever may be found at %s, but for what nobody has named',
    (_, sheet) => {
      const others = sheet.kind === 'longitudinal' ? ofEnds : ofRuns
      const topics = [
        ...derivedTopics.filter((topic) => !others.includes(topic)),
        ...sheet.parts.flatMap(({ rules }) => rules.map(({ id }) => id)),
      ]
      expect(topics.filter((topic) => severityOfTopic(sheet, topic) === 'notStated')).toEqual([])
      expect(seenKinds.filter((kind) => severityOfSeen(sheet, kind) === 'notStated')).toEqual(['other'])
    },
  )

  // NCHRP 656, table 37: an end post that does not work is of the highest priority; a stub over 4 in, a cable that moves
  // over 1 in and a loose bracket are of the middle one.
  it('as the published table of terminals has it', () => {
    const flared = shippedSheets.find(({ id }) => id === 'flared-terminal-31')!
    expect(severityOf(severityOfTopic(flared, 'post-kind'))).toBe('lets it fail')
    for (const topic of ['stub-height', 'cable-play', 'bracket-seat'])
      expect(severityOf(severityOfTopic(flared, topic))).toBe('weakens it')
  })
})
