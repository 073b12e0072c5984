import { describe, expect, test } from 'vitest'
import {
  bringOverPath,
  debriefPath,
  drillsPath,
  panePath,
  parseRoute,
  practicePath,
  requirementPath,
  runsPath,
} from './route.ts'

describe('parseRoute', () => {
  test('reads what the paths say', () => {
    expect(parseRoute(runsPath, '')).toEqual({ view: 'runs' })
    expect(parseRoute(bringOverPath, '')).toEqual({ view: 'bring-over' })
    const run = { view: 'run', run: 'a b', open: null, reading: null, seenAt: null, isPractice: false }
    expect(parseRoute(panePath('a b', 'walk'), '')).toEqual({ ...run, pane: 'walk' })
    expect(parseRoute(panePath('a b', 'not-proven'), '')).toEqual({ ...run, pane: 'not-proven' })
  })

  test('keeps the requirement that is open, and what is read for it', () => {
    const path = requirementPath('r', 'post-1/flare-offset', 'post-3/lateral-offset')
    const [place, query] = path.split('?')
    expect(parseRoute(place!, `?${query}`)).toEqual({
      view: 'run',
      run: 'r',
      pane: 'walk',
      open: 'post-1/flare-offset',
      reading: 'post-3/lateral-offset',
      seenAt: null,
      isPractice: false,
    })
  })

  test('keeps practice behind an address of its own, without what is signed or handed on', () => {
    const run = { view: 'run', run: 'r', open: null, reading: null, seenAt: null, isPractice: true }
    expect(parseRoute(practicePath('r'), '')).toEqual({ ...run, pane: 'walk' })
    expect(parseRoute(`${practicePath('r')}/findings`, '')).toEqual({ ...run, pane: 'findings' })
    expect(parseRoute(`${practicePath('r')}/record`, '')).toEqual({ view: 'nothing' })
    expect(parseRoute(debriefPath('r'), '')).toEqual({ view: 'debrief', run: 'r' })
    expect(parseRoute(drillsPath, '')).toEqual({ view: 'drills', part: 'drills' })
  })

  test('knows an address that shows nothing', () => {
    expect(parseRoute('/roads', '')).toEqual({ view: 'nothing' })
    expect(parseRoute('/runs/r/budget', '')).toEqual({ view: 'nothing' })
  })
})
