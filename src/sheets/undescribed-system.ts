import type { CitedInches, Dimension, LongitudinalSheet } from '../core/hardware/hardware-sheet.ts'

const cited = { source: 'none', confirmation: 'common practice' } as const
const inches = (inches: number): CitedInches => ({ inches, ...cited })
/** Without limits: it is drawn so, and nothing is judged by it. */
const drawnAt = (nominal: number): Dimension => ({
  ...{ nominal, low: 'notStated', high: 'notStated', unit: 'in', role: 'centre' },
  measured: 'Not stated',
  ...cited,
})

/**
 * What stands in a run file for a barrier of which no sheet is at hand. Its lengths only put on the strip what was counted;
 * all of what was counted belongs to an end that no sheet fits, so that nothing is asked by it. Not on the shelf: nothing
 * is laid out by it.
 */
export const undescribedSystem: LongitudinalSheet = {
  format: 'lapwise-sheet/1',
  id: 'undescribed-system',
  version: '1.0.0',
  name: 'Barrier that no sheet at hand describes',
  notice: 'Nothing is asked of it and nothing of it is proven. Its lengths only place what was counted.',
  kind: 'longitudinal',
  sources: { none: { title: 'Rule of our own for a run that was counted', edition: 'common practice; no document' } },
  category: 'other longitudinal barrier',
  criteria: [],
  railHeight: drawnAt(29),
  straightness: 'notStated',
  postSpacing: drawnAt(75),
  lap: { rule: 'adjacent traffic', ...cited },
  parts: [],
  splice: { position: 'post', ...cited },
  post: { kind: 'standing post', make: { material: 'notStated', breakaway: 'none' }, block: false, ...cited },
  panels: {
    standard: [150, 300].map(inches),
    converting: [112.5, 187.5].map(inches),
    endOnly: [75].map(inches),
  },
  spacings: { full: inches(75), half: inches(37.5), quarter: inches(18.75), halfBeforeQuarter: inches(150) },
  omissions: [],
  movedPost: 'notStated',
  shortestRun: 'notStated',
  workingWidths: [],
  translations: {
    es: {
      'Barrier that no sheet at hand describes': 'Barrera que ninguna ficha a mano describe',
      'Nothing is asked of it and nothing of it is proven. Its lengths only place what was counted.':
        'De ella no se pide nada y nada está probado. Sus longitudes solo sitúan lo que se contó.',
      'standing post': 'poste existente',
      'Not stated': 'Sin decir',
    },
  },
}
