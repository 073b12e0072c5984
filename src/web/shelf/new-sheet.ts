import type { HardwareSheet } from '../../core/hardware/hardware-sheet.ts'
import type { Language } from '../../core/language.ts'
import type { Draft } from '../form/draft.ts'
import { shelfFormEn } from '../messages/shelf-form-en.ts'
import { shelfFormEs } from '../messages/shelf-form-es.ts'

/**
 * A sheet that states nothing yet. What every sheet has to state is left open, so that the form asks for it at its place; what a
 * source may leave out is not stated. No number stands in it that nobody gave.
 */
export function newSheet(kind: HardwareSheet['kind'], id: string, name: string, language: Language): Draft {
  const words = { en: shelfFormEn.fresh, es: shelfFormEs.fresh }
  const [own, to] = language === 'es' ? ([words.es, 'en'] as const) : ([words.en, 'es'] as const)
  return {
    ...{ format: 'lapwise-sheet/1', kind, id, version: '1', language, name, notice: own.notice },
    translations: { [to]: { [own.notice]: words[to].notice } },
    sources: { [source]: { title: '', edition: '' } },
    ...{ criteria: [], railHeight: noLimits, straightness: 'notStated', postSpacing: noLimits, lap: cited, parts: [] },
    ...(kind === 'longitudinal' ? noSystem : noUnit),
  }
}

const source = 'document1'
const cited = { source, confirmation: 'from memory' }
const noLimits = { nominal: 'notStated', low: 'notStated', high: 'notStated', unit: 'in', ...cited }

const noUnit = {
  ...{ joins: [], posts: [], panels: { own: [], adapters: [] }, listedLength: cited, lengthOfNeedFrom: cited },
  ...{ stroke: 'notStated', flare: 'none', gating: 'notStated', energyAbsorbing: 'notStated', grading: 'notStated' },
}

const noSystem = {
  ...{ splice: cited, post: cited, panels: { standard: [cited], converting: [], endOnly: [] } },
  spacings: { full: cited, half: cited, quarter: cited, halfBeforeQuarter: cited },
  ...{ omissions: [], movedPost: 'notStated', shortestRun: 'notStated', workingWidths: [] },
}
