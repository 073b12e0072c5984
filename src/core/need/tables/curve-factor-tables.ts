import type { CurveFactorTable } from './table.ts'

/** ft, mi/h */
export const curveFactor2011Us: CurveFactorTable = {
  source: 'RDG 2011 Table 3-2 (US customary)',
  confirmation: 'from memory',
  // no factor above 2950 ft: a public guide for military roads
  remark: { kind: 'last column least certain', limitIsPrinted: true },
  speeds: [40, 45, 50, 55, 60, 65, 70],
  rows: [
    { radius: 2950, factors: [1.1, 1.1, 1.1, 1.2, 1.2, 1.2, 1.2] },
    { radius: 2300, factors: [1.1, 1.1, 1.2, 1.2, 1.2, 1.2, 1.3] },
    { radius: 1970, factors: [1.1, 1.2, 1.2, 1.2, 1.3, 1.3, 1.4] },
    { radius: 1640, factors: [1.1, 1.2, 1.2, 1.3, 1.3, 1.3, 1.4] },
    { radius: 1475, factors: [1.2, 1.2, 1.3, 1.3, 1.4, 1.4, 1.5] },
    { radius: 1315, factors: [1.2, 1.2, 1.3, 1.3, 1.4, 1.4, null] },
    { radius: 1150, factors: [1.2, 1.2, 1.3, 1.4, 1.5, null, null] },
    { radius: 985, factors: [1.2, 1.3, 1.4, 1.5, 1.5, null, null] },
    { radius: 820, factors: [1.3, 1.3, 1.4, 1.5, null, null, null] },
    { radius: 660, factors: [1.3, 1.4, 1.5, null, null, null, null] },
    { radius: 495, factors: [1.4, 1.5, null, null, null, null, null] },
    { radius: 330, factors: [1.5, null, null, null, null, null, null] },
  ],
}

/** ft, mi/h */
export const curveFactor2006Us: CurveFactorTable = {
  source: 'RDG 1996/2002/2006 Table 3.2 (US customary)',
  confirmation: 'from memory',
  remark: { kind: 'last column least certain', limitIsPrinted: false },
  speeds: [40, 45, 50, 55, 60, 65, 70],
  rows: [
    { radius: 2860, factors: [1.1, 1.1, 1.1, 1.2, 1.2, 1.2, 1.3] },
    { radius: 2290, factors: [1.1, 1.1, 1.2, 1.2, 1.2, 1.3, 1.3] },
    { radius: 1910, factors: [1.1, 1.2, 1.2, 1.2, 1.3, 1.3, 1.4] },
    { radius: 1640, factors: [1.1, 1.2, 1.2, 1.3, 1.3, 1.4, 1.4] },
    { radius: 1430, factors: [1.2, 1.2, 1.3, 1.3, 1.4, 1.4, 1.5] },
    { radius: 1270, factors: [1.2, 1.2, 1.3, 1.3, 1.4, 1.5, null] },
    { radius: 1150, factors: [1.2, 1.2, 1.3, 1.4, 1.5, null, null] },
    { radius: 950, factors: [1.2, 1.3, 1.4, 1.5, 1.5, null, null] },
    { radius: 820, factors: [1.3, 1.3, 1.4, 1.5, null, null, null] },
    { radius: 720, factors: [1.3, 1.4, 1.5, null, null, null, null] },
    { radius: 570, factors: [1.4, 1.5, null, null, null, null, null] },
    { radius: 380, factors: [1.5, null, null, null, null, null, null] },
  ],
}

/** m, km/h */
export const curveFactorMetric: CurveFactorTable = {
  source: 'RDG Table 3-2 (metric)',
  confirmation: 'from memory',
  speeds: [60, 70, 80, 90, 100, 110],
  rows: [
    { radius: 900, factors: [1.1, 1.1, 1.1, 1.2, 1.2, 1.2] },
    { radius: 700, factors: [1.1, 1.1, 1.2, 1.2, 1.2, 1.3] },
    { radius: 600, factors: [1.1, 1.2, 1.2, 1.2, 1.3, 1.4] },
    { radius: 500, factors: [1.1, 1.2, 1.2, 1.3, 1.3, 1.4] },
    { radius: 450, factors: [1.2, 1.2, 1.3, 1.3, 1.4, 1.5] },
    { radius: 400, factors: [1.2, 1.2, 1.3, 1.3, 1.4, null] },
    { radius: 350, factors: [1.2, 1.2, 1.3, 1.4, 1.5, null] },
    { radius: 300, factors: [1.2, 1.3, 1.4, 1.5, 1.5, null] },
    { radius: 250, factors: [1.3, 1.3, 1.4, 1.5, null, null] },
    { radius: 200, factors: [1.3, 1.4, 1.5, null, null, null] },
    { radius: 150, factors: [1.4, 1.5, null, null, null, null] },
    { radius: 100, factors: [1.5, null, null, null, null, null] },
  ],
}
