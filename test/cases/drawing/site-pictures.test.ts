import { mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { findNeed } from '../../../src/core/need/need.ts'
import type { Drawing } from '../../../src/drawing/drawing.ts'
import { writeSvg } from '../../../src/drawing/svg/write-svg.ts'
import { planDrawing } from '../../../src/drawing/views/plan.ts'
import { sectionDrawing } from '../../../src/drawing/views/section.ts'
import { readSite } from '../../../src/formats/site/read-site.ts'
import { writePlan, writeSection } from '../../../src/operations/write-site-drawings.ts'
import { siteInputs } from './site-inputs.ts'
import { whyNotWellFormed } from './well-formed.ts'

const pictures: Readonly<Record<string, () => Drawing>> = {
  'site-plan-two-way-web': () => planDrawing(siteInputs.twoWay('web')),
  'site-plan-two-way-phone': () => planDrawing(siteInputs.twoWay('phone')),
  'site-plan-two-way-letter': () => planDrawing(siteInputs.twoWay('letter')),
  'site-plan-divided-web': () => planDrawing(siteInputs.divided('web')),
  'site-plan-outside-web': () => planDrawing(siteInputs.outside('web')),
  'site-plan-inside-phone': () => planDrawing(siteInputs.inside('phone')),
  'site-plan-spiral-A4': () => planDrawing(siteInputs.spiral('A4')),
  'site-section-two-way-web': () => sectionDrawing(siteInputs.twoWay('web'), 1010 * 0.3048),
  'site-section-left-phone': () => sectionDrawing(siteInputs.left('phone'), 930 * 0.3048),
  'site-section-divided-A4': () => sectionDrawing(siteInputs.divided('A4'), 1205),
}

/** `LAPWISE_UPDATE=1 npx vitest run --project unit test/cases/drawing` writes them anew: look at each before it is kept. */
describe.each(Object.entries(pictures))('%s', (name, draw) => {
  const folder = new URL(`./${name}/`, import.meta.url)
  const file = new URL('expected.svg', folder)

  it('is drawn as the picture that was looked at, in well-formed XML', () => {
    const svg = writeSvg(draw())
    if (process.env.LAPWISE_UPDATE === '1') {
      mkdirSync(folder, { recursive: true })
      writeFileSync(file, svg)
    }
    expect(svg).toBe(readFileSync(file, 'utf8'))
    expect(whyNotWellFormed(svg)).toBe(null)
  })
})

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
    const site = readSite('site.json', JSON.stringify({ ...file, hazards, road }))
    if (!site.ok) throw new Error(JSON.stringify(site.error))
    return site.value
  }
  const [site, tooFast] = [siteAt(55), siteAt(95)]
  const need = findNeed(site)
  expect(need.ok && writePlan(site, need.value, 'web')).toContain('data-place="approach-unit"')
  expect(need.ok && writeSection(site, need.value, 40, 'phone')).toContain('top of rail 31 in')
  expect(findNeed(tooFast).ok).toBe(false)
  const refused = writePlan(tooFast, null, 'web')
  expect(refused).toContain('data-place="hazard-1-near-from"')
  expect(refused).not.toContain('data-place="approach-path"')
})
