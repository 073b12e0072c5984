import { acceptance } from './en/acceptance.ts'
import { answers } from './en/answers.ts'
import { common } from './en/common.ts'
import { fit } from './en/fit.ts'
import { hardware } from './en/hardware.ts'
import { instruments } from './en/instruments.ts'
import { key } from './en/key.ts'
import { layout } from './en/layout.ts'
import { need } from './en/need.ts'
import { places } from './en/places.ts'
import { problems } from './en/problems.ts'
import { quantities } from './en/quantities.ts'
import { record } from './en/record.ts'
import { remedies } from './en/remedies.ts'
import { requirements } from './en/requirements.ts'
import { sheets } from './en/sheets.ts'
import { staking } from './en/staking.ts'
import { verdicts } from './en/verdicts.ts'
import type { Print } from './print.ts'
import { printIn, type Words } from './print-in.ts'
import { together } from './together.ts'

/** All that English brings along; another language is made of it to find what is said in none. */
export const englishWords: Words = {
  language: 'en',
  printers: together(
    acceptance,
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
  joints: { and: 'and', or: 'or' },
  own: null,
}

const prints = {
  published: printIn(englishWords, null),
  us: printIn(englishWords, 'us'),
  metric: printIn(englishWords, 'metric'),
}

/** English; the same for the same units. */
export const english = (units: Print['units']): Print => prints[units ?? 'published']
