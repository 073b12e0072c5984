import type { FlareTable, ShyLineTable } from './table.ts'

/** ft, mi/h; the same in both editions. */
export const shyLineUs: ShyLineTable = {
  source:
    'RDG 2011 Table 5-7 (US customary), as printed in the Kentucky Highway Knowledge Portal, "Length of Need", Table 2',
  confirmation: 'published',
  rows: [
    { speed: 30, values: [4] },
    { speed: 40, values: [5] },
    { speed: 45, values: [6] },
    { speed: 50, values: [6.5] },
    { speed: 55, values: [7] },
    { speed: 60, values: [8] },
    { speed: 70, values: [9] },
    { speed: 75, values: [10] },
    { speed: 80, values: [12] },
  ],
}

/** m, km/h; rows of their own, not conversions. */
export const shyLineMetric: ShyLineTable = {
  source: 'RDG 2011 Table 5-7 (metric)',
  confirmation: 'from memory',
  rows: [
    { speed: 50, values: [1.1] },
    { speed: 60, values: [1.4] },
    { speed: 70, values: [1.7] },
    { speed: 80, values: [2.0] },
    { speed: 90, values: [2.2] },
    { speed: 100, values: [2.4] },
    { speed: 110, values: [2.8] },
    { speed: 120, values: [3.2] },
    { speed: 130, values: [3.7] },
  ],
}

const flareSource = {
  source: 'RDG 2011 Table 5-9 (2002: Table 5.7)',
  confirmation: 'from memory',
  // 31 in W-beam to 5:1; 27 3/4 in W-beam is doubtful steeper than 15:1 at test level 3 (public answer 321)
  remark: { kind: 'flatter is always allowed' },
} as const

/** a of a:1, mi/h; columns inside the shy line, beyond it rigid, beyond it semi-rigid. */
export const flareUs: FlareTable = {
  ...flareSource,
  rows: [
    { speed: 30, values: [13, 8, 7] },
    { speed: 40, values: [16, 10, 8] },
    { speed: 45, values: [18, 12, 10] },
    { speed: 50, values: [21, 14, 11] },
    { speed: 55, values: [24, 16, 12] },
    { speed: 60, values: [26, 18, 14] },
    { speed: 70, values: [30, 20, 15] },
  ],
}

/** The same rates by km/h. */
export const flareMetric: FlareTable = {
  ...flareSource,
  rows: [
    { speed: 50, values: [13, 8, 7] },
    { speed: 60, values: [16, 10, 8] },
    { speed: 70, values: [18, 12, 10] },
    { speed: 80, values: [21, 14, 11] },
    { speed: 90, values: [24, 16, 12] },
    { speed: 100, values: [26, 18, 14] },
    { speed: 110, values: [30, 20, 15] },
  ],
}
