import { describe, expect, it } from 'vitest'
import { modelFrom } from '../../../test/fixtures/verdict-model.ts'
import { instruments } from '../../core/measurement/instruments.ts'
import type { Reading } from '../../core/measurement/reading.ts'
import { deriveRequirements } from '../../core/requirements/derive-requirements.ts'
import { judgeRun } from '../../core/verdicts/judge-run.ts'
import { remedyOf } from '../../core/verdicts/saying.ts'
import { english } from '../english.ts'

const model = modelFrom('flared-terminal-31', 1000)
const requirements = deriveRequirements(model)

/** What is found of panels that hang as `hangs` says, of splices read out of place, and of other answers; null for none. */
function found(
  hangs: Readonly<Record<number, string>>,
  splices: readonly number[] = [],
  unread: readonly number[] = [],
  others: Readonly<Record<string, string | null>> = {},
) {
  const readings = requirements.flatMap(({ id, topic, place, look }): Reading[] => {
    if (look.kind !== 'choose' || (topic === 'panel-length' && unread.includes(place.number))) return []
    const right = look.choices.find((choice) => choice.right)!.id
    if (others[id] === null) return []
    const read =
      others[id] ??
      (topic === 'panel-length'
        ? hangs[place.number]
        : topic === 'splice-position' && splices.includes(place.number)
          ? 'elsewhere'
          : undefined)
    const about = { uncertainty: null, by: 'J. Okafor', at: '2016-05-12T10:05:00Z', where: null, photos: [] }
    const later = { instrument: null, corrects: null, rechecks: null, together: null }
    return [{ id: `of ${id}`, of: id, answer: { kind: 'choice', choice: read ?? right }, ...about, ...later }]
  })
  const rules = { rule: { kind: 'guard band', multiple: 1 }, instruments } as const
  return judgeRun(model, requirements, readings, rules).findings
}

const remedies = (...of: Parameters<typeof found>) =>
  found(...of).map((finding) => `${finding.id}: ${english(null).say(remedyOf(finding))}`)
const right = 'Every splice then lies where it belongs.'

describe('panels of another length', () => {
  it('has the layout that the cases are worked out for', () => {
    expect(model.layout.panels.map(({ inches }) => inches)).toEqual([150, 150, 112.5, 300, 300, 300, 150, 187.5])
  })

  it('leaves a terminal its slotted panel, where the panel after it is a 25 ft one', () => {
    expect(remedies({ 2: 'in-300' })).toEqual([
      `panel-2/panel-length: Exchange panel 2 (25 ft 0 in) for a 12 ft 6 in panel. ${right}`,
    ])
  })

  it('hangs the slotted panel, by its name, where the terminal begins with a panel of another length', () => {
    expect(remedies({ 1: 'in-187.5' })).toEqual([
      `panel-1/panel-length: Exchange panel 1 (15 ft 7 1/2 in) for the slotted end panel, 12 ft 6 in long. ${right}`,
    ])
  })

  it('is one finding where two panels make up for each other, with the splices that they shift', () => {
    const [one, ...rest] = found({ 3: 'in-150', 8: 'in-150' }, [3, 4, 5, 6, 7])
    expect(rest).toEqual([])
    expect(english(null).say(remedyOf(one!))).toBe(
      `Exchange panel 3 (12 ft 6 in) for a 9 ft 4 1/2 in panel; exchange panel 8 (12 ft 6 in) for a 15 ft 7 1/2 in panel. ${right}`,
    )
    expect(one!.requirements).toEqual([
      ...['panel-3/panel-length', 'panel-8/panel-length'],
      ...[3, 4, 5, 6, 7].map((number) => `splice-${number}/splice-position`),
    ])
  })

  it('is a finding each where panels are wrong by whole post spaces, which shifts no splice', () => {
    expect(found({ 2: 'in-300', 5: 'in-150' }).map(({ id, requirements: stands }) => [id, ...stands])).toEqual([
      ['panel-2/panel-length', 'panel-2/panel-length'],
      ['panel-5/panel-length', 'panel-5/panel-length'],
    ])
  })

  it('needs no length to exchange a panel of another length', () => {
    expect(remedies({ 4: 'other' }, [4, 5])).toEqual([
      `panel-4/panel-length: Exchange panel 4 for a 25 ft 0 in panel. ${right}`,
    ])
  })

  it('measures the panels since the last splice that is right, where splices are wrong and no panel is', () => {
    expect(remedies({}, [5, 6], [4, 5])).toEqual([
      expect.stringMatching(/^splice-5.splice-position: Measure panel 5 splice to splice: it is not/),
    ])
    expect(remedies({}, [5, 6], [4])).toEqual([expect.stringContaining('Measure panels 4 to 5 splice to splice')])
    expect(remedies({}, [5, 6])).toEqual([expect.stringContaining('Read splice 5 again')])
  })

  it('exchanges a slotted panel that hangs elsewhere for the length and the kind that belong there, in one', () => {
    const steps = found({ 2: 'in-300', 4: 'in-150' }).map((one) => one.steps)
    expect(steps).toEqual([
      [{ kind: 'exchange panel', panel: 2, from: 300, to: 150, name: null }],
      [{ kind: 'exchange panel', panel: 4, from: 150, to: 300, name: null }],
    ])
    expect(found({ 1: 'in-300' })[0]!.steps).toEqual([
      {
        kind: 'exchange panel',
        panel: 1,
        from: 300,
        to: 150,
        name: expect.objectContaining({ own: 'slotted end panel' }),
      },
    ])
    expect(found({ 4: 'other' }, [4, 5])[0]!.steps).toEqual([
      { kind: 'exchange panel', panel: 4, from: null, to: 300, name: null },
    ])
  })

  // 112.5 for 150 in and then 150 for 112.5 in: only the splice between them lies half a space upstream.
  it('stands on the splices that it shifts, and on none where nothing is shifted any more', () => {
    const [panels, splice, ...rest] = found({ 2: 'in-112.5', 3: 'in-150' }, [2, 5])
    expect(rest).toEqual([])
    expect(panels!.requirements).toEqual(['panel-2/panel-length', 'panel-3/panel-length', 'splice-2/splice-position'])
    expect(panels!.what).toMatchObject({
      kind: 'found',
      parts: [
        {
          kind: 'panels and splices',
          panels: [
            { place: { id: 'panel-2' }, because: { kind: 'chosen', choice: 'in-112.5' } },
            { place: { id: 'panel-3' }, because: { kind: 'chosen', choice: 'in-150' } },
          ],
          splices: [2],
        },
      ],
    })
    expect(splice!.requirements).toEqual(['splice-5/splice-position'])
  })

  it('is by itself where nobody can say how long it is', () => {
    expect(found({ 3: 'other', 5: 'in-150' }).map(({ requirements }) => requirements)).toEqual([
      ['panel-3/panel-length'],
      ['panel-5/panel-length'],
    ])
  })

  it('takes the kind of its panel with it where that is wrong as well', () => {
    const plain = { 'panel-1/slotted-panel': 'plain' }
    expect(found({ 1: 'in-300' }, [], [], plain).map(({ requirements }) => requirements)).toEqual([
      ['panel-1/panel-length', 'panel-1/slotted-panel'],
    ])
    expect(found({}, [], [], plain).map(({ requirements }) => requirements)).toEqual([['panel-1/slotted-panel']])
  })

  it('is one for splices between which none is right, and one for each where one is', () => {
    const stands = (...of: Parameters<typeof found>) => found(...of).map(({ requirements }) => requirements)
    expect(stands({}, [3, 6])).toEqual([['splice-3/splice-position'], ['splice-6/splice-position']])
    expect(stands({}, [3, 5], [], { 'splice-4/splice-position': null })).toEqual([
      ['splice-3/splice-position', 'splice-5/splice-position'],
    ])
    expect(found({}, [1])[0]!.steps).toMatchObject([{ kind: 'measure first', what: 'splice again', from: 1, to: 1 }])
  })

  // 150 for 112.5 in shifts by half a space, and 150 for 187.5 in shifts back: between them every splice is off.
  it('ends a stretch where what hangs is shifted by nothing again, so that a later panel is another finding', () => {
    expect(found({ 3: 'in-150', 4: 'in-187.5', 5: 'in-150' }).map((one) => one.requirements)).toEqual([
      ['panel-3/panel-length', 'panel-4/panel-length'],
      ['panel-5/panel-length'],
    ])
  })

  it('names by number what is to be measured before a splice that is out of place', () => {
    const measure = (...of: Parameters<typeof found>) => found(...of).map(({ id, steps }) => [id, steps])
    const step = { kind: 'measure first', using: null }
    expect(measure({}, [5, 6], [4, 5])).toEqual([
      [
        'splice-5/splice-position',
        [{ ...step, what: 'panels', requirements: ['panel-5/panel-length'], from: 5, to: 5 }],
      ],
    ])
    expect(measure({}, [5, 6])).toEqual([
      [
        'splice-5/splice-position',
        [{ ...step, what: 'splice again', requirements: ['splice-5/splice-position'], from: 5, to: 5 }],
      ],
    ])
  })
})
