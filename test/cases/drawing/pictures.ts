import { nameOf } from '../../../src/core/hardware/sheet-text.ts'
import type { Drawing } from '../../../src/drawing/drawing.ts'
import { elevationDrawing, elevationPages } from '../../../src/drawing/views/elevation.ts'
import { figureFacts } from '../../../src/drawing/views/figures/figure-facts.ts'
import { figureDrawing } from '../../../src/drawing/views/figures.ts'
import { planDrawing } from '../../../src/drawing/views/plan.ts'
import { sectionDrawing } from '../../../src/drawing/views/section.ts'
import type { StripEnd, StripInput } from '../../../src/drawing/views/strip/strip-input.ts'
import { stripDrawing, stripPages } from '../../../src/drawing/views/strip.ts'
import { terminalDetail } from '../../../src/drawing/views/terminal-detail.ts'
import { english } from '../../../src/words/english.ts'
import { figureRequirements } from './figure-requirements.ts'
import { bridgeRun, culvertRun, mixedVerdicts } from './hand-layouts.ts'
import { siteInputs } from './site-inputs.ts'

const culvert = culvertRun(6)
const judged = { ...culvert, verdicts: mixedVerdicts(culvert.layout) }
const long = culvertRun(26)

/** As an operation makes the input of a metric run: names of its ends and all that is printed in metric units. */
function inMetric(input: StripInput): StripInput {
  const print = english('metric')
  const named = (end: StripEnd): StripEnd => (end.sheet === null ? end : { ...end, name: print.say(nameOf(end.sheet)) })
  return { ...input, first: named(input.first), second: named(input.second), units: 'metric', print }
}

/** Every drawing that has an expected picture: `NAME/expected.png` in this folder. */
export const pictures: Readonly<Record<string, () => Drawing>> = {
  'strip-web': () => stripDrawing(culvert),
  'strip-web-judged': () => stripDrawing(judged),
  'strip-letter': () => stripPages(judged, 'letter', 'own')[0]!,
  'strip-letter-long': () => stripPages({ ...long, verdicts: mixedVerdicts(long.layout) }, 'letter', 'own')[0]!,
  'strip-a4-bridge-end': () => stripPages(bridgeRun(), 'A4', 'own')[0]!,
  'strip-metric-a3': () => stripPages(inMetric(judged), 'A3', 'own')[0]!,
  'elevation-web': () => elevationDrawing(culvert),
  'elevation-letter': () => elevationPages(culvert, 'letter', 'own')[0]!,
  'elevation-a4-bridge-end': () => elevationPages(bridgeRun(), 'A4', 'own')[0]!,
  'detail-flared-letter': () => terminalDetail(culvert, 'first', 'letter')!,
  'detail-anchor-metric-a4': () => terminalDetail(inMetric(culvert), 'second', 'A4')!,
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
  ...Object.fromEntries(
    [...figureRequirements].map(([name, requirement]) => [
      `figure-${name}`,
      () => figureDrawing(requirement.figure!, figureFacts(requirement, culvert.first.sheet!, english(null))),
    ]),
  ),
}
