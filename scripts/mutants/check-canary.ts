import { fileURLToPath } from 'node:url'
import { type Fate, measureMutants } from './measure-mutants.ts'

const file = (name: string): string => fileURLToPath(new URL(`canary/${name}`, import.meta.url))

const known: readonly (readonly [original: string, replacement: string, fate: Fate])[] = [
  ['4', '5', 'killed'],
  ['speed > 50', 'speed >= 50', 'killed'],
  ['speed > 50', 'speed <= 50', 'killed'],
  ['50', '51', 'killed'],
  ['length + 1', 'length - 1', 'not reached'],
  ['1', '2', 'not reached'],
  ['Math.max(length, length)', 'Math.min(length, length)', 'alive'],
  ['left !== 0', 'left === 0', 'killed'],
  ['0', '1', 'killed'],
  ['left--', 'left++', 'ran for ever'],
]

/** What came out wrong of ten mutants of known fate; while there is anything, no figure of this program counts. */
export async function checkCanary(): Promise<string[]> {
  const measured = await measureMutants([file('canary.ts')], [file('canary.test.ts')], { every: 1, from: 0 }, () => {})
  const wanted = known.map(([original, replacement, fate]) => `${original} → ${replacement}: ${fate}`)
  const found = measured.map(({ original, replacement, fate }) => `${original} → ${replacement}: ${fate}`)
  return [
    ...wanted.filter((one) => !found.includes(one)).map((one) => `missing  ${one}`),
    ...found.filter((one) => !wanted.includes(one)).map((one) => `found    ${one}`),
  ]
}
