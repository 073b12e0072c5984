import { expect, it } from 'vitest'
import { findNeed } from '../../../src/core/need/need.ts'
import { siteFromValue } from '../../../src/formats/site/read-site.ts'
import { writePlan, writeSection } from '../../../src/operations/write-site-drawings.ts'
import { english } from '../../../src/words/english.ts'

it('plan and section are written from a site file, also where its need is refused', () => {
  const file = {
    format: 'lapwise-site/1',
    units: 'us',
    clearZone: 34,
    barrier: { offset: 8, approachEnd: 'tangent-terminal-31' },
  }
  const hazards = [{ name: 'river', from: '1+00', to: '2+00', near: 20, beyondClearZone: true }]
  const siteAt = (speed: number) => {
    const road = { speed, adt: 4750, traffic: 'two-way', lanes: 2, laneWidth: 12, shoulderWidth: 8 }
    const site = siteFromValue('site.json', { ...file, hazards, road })
    if (!site.ok) throw new Error(JSON.stringify(site.error))
    return site.value
  }
  const [site, tooFast] = [siteAt(55), siteAt(95)]
  const need = findNeed(site)
  expect(need.ok && writePlan(site, need.value, 'web', english(null))).toContain('data-place="approach-unit"')
  expect(need.ok && writeSection(site, need.value, 40, 'phone', english(null))).toContain('top of rail 31 in')
  expect(findNeed(tooFast).ok).toBe(false)
  const refused = writePlan(tooFast, null, 'web', english(null))
  expect(refused).toContain('data-place="hazard-1-near-from"')
  expect(refused).not.toContain('data-place="approach-path"')
})
