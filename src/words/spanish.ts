import { answers } from './es/answers.ts'
import { common } from './es/common.ts'
import { fit } from './es/fit.ts'
import { hardware } from './es/hardware.ts'
import { instruments } from './es/instruments.ts'
import { key } from './es/key.ts'
import { layout } from './es/layout.ts'
import { need } from './es/need.ts'
import { places } from './es/places.ts'
import { problems } from './es/problems.ts'
import { quantities } from './es/quantities.ts'
import { record } from './es/record.ts'
import { remedies } from './es/remedies.ts'
import { requirements } from './es/requirements.ts'
import { sheets } from './es/sheets.ts'
import { staking } from './es/staking.ts'
import { verdicts } from './es/verdicts.ts'
import type { Print } from './print.ts'
import { printIn, type Words } from './print-in.ts'
import { sayWithRest } from './spanish/say-in-spanish.ts'
import { together } from './together.ts'

const words: Words = {
  language: 'es',
  printers: together(
    answers,
    common,
    fit,
    hardware,
    instruments,
    key,
    layout,
    need,
    places,
    problems,
    quantities,
    record,
    remedies,
    requirements,
    sheets,
    staking,
    verdicts,
  ),
  joints: { and: 'y', or: 'o' },
  prose: sayWithRest,
}

const prints = { published: printIn(words, null), us: printIn(words, 'us'), metric: printIn(words, 'metric') }

/** Spanish; the same for the same units. */
export const spanish = (units: Print['units']): Print => prints[units ?? 'published']
