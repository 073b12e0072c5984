import { normalDistribution } from '../measurement/normal.ts'
import { type Rate, rateOf, usualZ } from './intervals.ts'

/** How well faults are told from what is sound. */
export interface Detection {
  /** Faults found, of all that were there. */
  readonly hits: Rate
  /** Sound places called wrong, of all sound ones that were looked at. */
  readonly falseAlarms: Rate
  /** d': 0 is chance, larger tells better. */
  readonly sensitivity: number
  readonly sensitivityLow: number
  readonly sensitivityHigh: number
  /** c: above 0 lets pass when in doubt, below 0 calls wrong when in doubt. */
  readonly criterion: number
}

/**
 * Signal detection with the log-linear correction, which adds a half to each count and one to each total, so that nobody who
 * found all or called nothing wrong gets an infinite figure; with an interval of 95 % for d'.
 *
 * d' = z(H) - z(F), c = -(z(H) + z(F)) / 2; var d' = H(1-H) / (S phi(z(H))^2) + F(1-F) / (N phi(z(F))^2)
 *
 * @param hits         of `signals` faults
 * @param falseAlarms  of `noises` sound places
 * @returns null where there was no fault or nothing sound
 * @source M. J. Hautus, Behavior Research Methods, Instruments, & Computers 27, 1995, 46-51 (correction); V. Gourevitch and
 *   E. Galanter, Psychometrika 32, 1967, 25-33 (variance)
 */
export function detectionOf(hits: number, signals: number, falseAlarms: number, noises: number): Detection | null {
  if (signals === 0 || noises === 0) return null
  const [h, f] = [(hits + 0.5) / (signals + 1), (falseAlarms + 0.5) / (noises + 1)]
  const [zh, zf] = [normalQuantile(h), normalQuantile(f)]
  const part = (p: number, z: number, n: number): number => (p * (1 - p)) / (n * density(z) ** 2)
  const half = usualZ * Math.sqrt(part(h, zh, signals) + part(f, zf, noises))
  return {
    hits: rateOf(hits, signals),
    falseAlarms: rateOf(falseAlarms, noises),
    sensitivity: zh - zf,
    sensitivityLow: zh - zf - half,
    sensitivityHigh: zh - zf + half,
    criterion: -(zh + zf) / 2,
  }
}

const density = (z: number): number => Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI)

/** The value below which this share of a standard normal distribution lies, by halving: 0 < p < 1. */
function normalQuantile(p: number): number {
  let [low, high] = [-40, 40]
  for (let i = 0; i < 80; i++) {
    const middle = (low + high) / 2
    if (normalDistribution(middle) < p) low = middle
    else high = middle
  }
  return (low + high) / 2
}
