import type { readings as english } from '../en/readings.ts'

export const readings: typeof english = {
  sideNotStated: (answer) => `${answer}, lado sin indicar`,
  uncertainty: (size) => `u = ${size} (k = 1), indicada`,
  confirmed: 'confirmado',
  notConfirmed: 'no confirmado',
  cannotSee: 'no se pudo ver',
  doesNotApply: (because) => `no aplica: ${because}`,
  readTo: (value, resolution) => `${value} (leído a ${resolution})`,
  setAsideBy: (by) => `dejado de lado por ${by}`,
  fromRunFile: 'del archivo del tramo',
  computedFrom: (places) => `calculado de ${places}`,
  measuredAt: (what, posts) =>
    `${what === 'along' ? 'distancia a lo largo de la baranda' : 'desvío lateral'} en ${posts}`,
  confirmedOnSight: 'confirmado a la vista',
}
