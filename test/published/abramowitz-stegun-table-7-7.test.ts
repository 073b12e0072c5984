// Abramowitz & Stegun, Handbook of Mathematical Functions, Table 7.7: Fresnel integrals C(x), S(x) of 7.3.1 and 7.3.2.
// The table prints 7 figures; the further figures were computed with a special-function library outside this project.
import { expect, test } from 'vitest'
import { fresnel } from '../../src/core/geometry/fresnel.ts'

const table: readonly (readonly [number, number, number])[] = [
  [0.1, 0.0999975326, 0.0005235895],
  [0.2, 0.1999210576, 0.0041876092],
  [0.3, 0.2994009761, 0.014116998],
  [0.4, 0.3974807592, 0.0333594327],
  [0.5, 0.4923442259, 0.0647324329],
  [0.6, 0.581095447, 0.1105402074],
  [0.8, 0.7228441719, 0.2493413931],
  [1.0, 0.7798934004, 0.4382591474],
  [1.2, 0.7154377229, 0.6234009185],
  [1.5, 0.445261176, 0.6975049601],
  [1.8, 0.3336329272, 0.4509387693],
  [2.0, 0.4882534061, 0.3434156784],
  [2.5, 0.4574130096, 0.6191817558],
  [3.0, 0.6057207893, 0.496312999],
  [4.0, 0.498426033, 0.4205157542],
  [5.0, 0.5636311887, 0.4991913819],
]

test.each(table)('C and S of %f are those of the table', (x, c, s) => {
  expect(Math.abs(fresnel(x).c - c)).toBeLessThan(0.6e-10)
  expect(Math.abs(fresnel(x).s - s)).toBeLessThan(0.6e-10)
  expect(fresnel(-x)).toEqual({ c: -fresnel(x).c, s: -fresnel(x).s })
})
