import { shippedSheets } from '../../sheets/shipped-sheets.ts'
import type { EndSheet, LongitudinalSheet } from '../hardware/hardware-sheet.ts'
import { exactLength } from '../units/exact-length.ts'
import { checkFit } from './check-fit.ts'
import type { FitCheck, FitFacts } from './fit.ts'

export const sheet = (id: string) => shippedSheets.find((one) => one.id === id)!
export const inches = (value: number) => exactLength(value, 'in')
export const feet = (value: number) => exactLength(value, 'ft')

export const noGround = {
  platformSlope: null,
  behindPostOne: null,
  recoveryLength: null,
  recoveryWidth: null,
  besideSlope: null,
  breakBehindPost: null,
  slopeBehind: null,
}

export const facts: FitFacts = {
  speed: { value: 55, unit: 'mi/h' },
  system: sheet('w-beam-midspan-31') as LongitudinalSheet,
  approach: sheet('flared-terminal-31') as EndSheet,
  departure: sheet('trailing-anchor-31') as EndSheet,
  work: 'new',
  letting: '2016-01-15',
  spacing: 'full',
  nearest: { hazard: 'the pier', clear: inches(72), length: feet(4) },
  twoWay: true,
  opposingReaches: false,
  adjoining: null,
  ground: noGround,
  curb: null,
  runLength: feet(200),
}

/** The one check whose name fits `what`. */
export function check(what: RegExp, changes: Partial<FitFacts>): FitCheck {
  const found = checkFit({ ...facts, ...changes }).find((one) => what.test(one.what))
  if (found === undefined) throw new Error(`no check of ${what}`)
  return found
}
