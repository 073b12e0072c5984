import type { AdtClass, RunoutTable } from './table.ts'

const classes2011: readonly AdtClass[] = [
  { from: 10_000, to: null, inclusive: false },
  { from: 5000, to: 10_000, inclusive: true },
  { from: 1000, to: 5000, inclusive: true },
  { from: 0, to: 1000, inclusive: true },
]

const classes2006: readonly AdtClass[] = [
  { from: 6000, to: null, inclusive: false },
  { from: 2000, to: 6000, inclusive: true },
  { from: 800, to: 2000, inclusive: true },
  { from: 0, to: 800, inclusive: true },
]

const montana = 'Montana Road Design Manual, Appendix K, example 9-3'

/** ft, mi/h. No rows at 45, 55, 65 and 75. */
export const runout2011Us: RunoutTable = {
  source: 'RDG 2011 Table 5-10(b)',
  confirmation: 'from memory',
  classes: classes2011,
  rows: [
    { speed: 30, values: [110, 90, 80, 70] },
    { speed: 40, values: [160, 130, 110, 100] },
    { speed: 50, values: [230, 190, 160, 150], published: { columns: [2], source: montana } },
    { speed: 60, values: [300, 250, 210, 200], published: { columns: [2], source: montana } },
    { speed: 70, values: [360, 330, 290, 250] },
    { speed: 80, values: [470, 430, 380, 330] },
  ],
}

/** m, km/h. */
export const runout2011Metric: RunoutTable = {
  source: 'RDG 2011 Table 5-10(a)',
  confirmation: 'from memory',
  classes: classes2011,
  rows: [
    { speed: 50, values: [34, 27, 24, 21] },
    { speed: 60, values: [49, 40, 34, 30] },
    { speed: 80, values: [70, 58, 49, 46] },
    { speed: 100, values: [91, 76, 64, 61] },
    { speed: 110, values: [110, 101, 88, 76] },
    { speed: 130, values: [143, 131, 116, 101] },
  ],
}

/** ft, mi/h: the bracketed values of the table. */
export const runout2006Us: RunoutTable = {
  source: 'RDG 1996/2002/2006 Table 5.8 (US customary)',
  confirmation: 'from memory',
  classes: classes2006,
  rows: [
    { speed: 30, values: [165, 165, 150, 130] },
    { speed: 40, values: [230, 200, 180, 165] },
    { speed: 45, values: [260, 245, 215, 200] },
    { speed: 50, values: [330, 300, 260, 245] },
    { speed: 55, values: [360, 345, 315, 280] },
    { speed: 60, values: [425, 400, 345, 330] },
    { speed: 70, values: [475, 445, 395, 360] },
  ],
}

/** m, km/h. */
export const runout2006Metric: RunoutTable = {
  source: 'RDG 1996/2002/2006 Table 5.8 (metric)',
  confirmation: 'from memory',
  classes: classes2006,
  rows: [
    { speed: 50, values: [50, 50, 45, 40] },
    { speed: 60, values: [70, 60, 55, 50] },
    { speed: 70, values: [80, 75, 65, 60] },
    { speed: 80, values: [100, 90, 80, 75] },
    { speed: 90, values: [110, 105, 95, 85] },
    { speed: 100, values: [130, 120, 105, 100] },
    { speed: 110, values: [145, 135, 120, 110] },
  ],
}
