import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { kindOf, units } from '../units/quantity-kinds.ts'
import { instrumentOf, instruments, instrumentsReading } from './instruments.ts'

const inch = 25.4

/** The table of docs/formats.md, written by hand: whoever changes a number changes it in two places. */
const documented = readFileSync(new URL('../../../docs/formats.md', import.meta.url), 'utf8')
  .split('| `instrument` ')[1]!
  .split('\n')
  .slice(2)
  .map((line) => /^\| `([a-z-]+)` +\| (\w+) +\| (.+?) +\| (.+?) +\|$/.exec(line))
  .filter((row) => row !== null)
  .map(([, id, reads, doubt, step]) => ({ id: id!, reads: reads!, doubt: doubt!, step: step! }))

/** In the unit of the instrument, which is millimetres for a step in inches; of the reading, as a fraction. */
function valueSaid(text: string): number {
  const [, above, below = '1'] = /^([\d.]+)(?:\/(\d+))?/.exec(text) ?? [undefined, '0']
  const value = Number(above) / Number(below)
  return text.endsWith(' in') ? value * inch : text.endsWith('of the reading') ? value / 100 : value
}

describe('the instruments that ship', () => {
  it('are those that the page on formats lists, in its order', () => {
    expect(instruments.map(({ id, unit }) => [id, kindOf(unit)])).toEqual(
      documented.map(({ id, reads }) => [id, reads]),
    )
  })

  it.each(documented)('$id: $doubt, read to $step', ({ id, doubt, step }) => {
    const { standardUncertainty, relativeUncertainty = 0, readTo } = instruments.find((one) => one.id === id)!
    const grows = doubt.endsWith('of the reading')
    expect(grows ? standardUncertainty : relativeUncertainty).toBe(0)
    expect(grows ? relativeUncertainty : standardUncertainty).toBeCloseTo(valueSaid(doubt), 6)
    expect(readTo).toBeCloseTo(valueSaid(step), 9)
  })

  it('say where each number is from; published are those of heights by total station and GNSS alone', () => {
    const published = instruments.filter(({ confirmation }) => confirmation === 'published').map(({ id }) => id)
    expect(published).toEqual(['total-station', 'gnss'])
  })

  it('one that nobody named is coarser than each of its kind', () => {
    for (const kind of new Set(units.map(kindOf))) {
      const coarse = instrumentOf(instruments, null, kind)
      // Heights by GNSS are worse than what anyone takes who says nothing.
      const named = instrumentsReading(instruments, kind).filter(({ id }) => id !== coarse.id && id !== 'gnss')
      for (const { readTo, standardUncertainty, relativeUncertainty = 0 } of named) {
        expect(coarse.readTo).toBeGreaterThan(readTo)
        expect(coarse.standardUncertainty).toBeGreaterThanOrEqual(standardUncertainty)
        expect(coarse.relativeUncertainty ?? 0).toBeGreaterThanOrEqual(relativeUncertainty)
      }
    }
  })
})
