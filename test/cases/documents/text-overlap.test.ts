import { expect, test } from 'vitest'
import { fileOf, isInstalled, outputOf } from './outside-programs.ts'
import { packetOfRun, packetRuns } from './packet-runs.ts'

interface Word {
  readonly said: string
  readonly left: number
  readonly right: number
  readonly top: number
  readonly bottom: number
}

/** Words of each page with their boxes, in points, as poppler finds them; of turned text the box that holds it. */
const wordsOf = (path: string): readonly (readonly Word[])[] =>
  outputOf('pdftotext', '-bbox', path, '-')
    .split('<page ')
    .slice(1)
    .map((page) =>
      [...page.matchAll(/<word xMin="(.+?)" yMin="(.+?)" xMax="(.+?)" yMax="(.+?)">(.*?)<\/word>/g)].map(
        ([, left, top, right, bottom, said]) => ({
          ...{ said: said!, left: Number(left), right: Number(right) },
          ...{ top: Number(top), bottom: Number(bottom) },
        }),
      ),
    )

/** What of its line a word may fill: poppler's boxes reach from the highest accent to the lowest tail of the font. */
const inkOf = ({ left, right, top, bottom }: Word) => {
  const spare = (bottom - top) * 0.22
  return { left: left + 0.2, right: right - 0.2, top: top + spare, bottom: bottom - spare }
}

function overlaps(words: readonly Word[]): readonly string[] {
  const inks = words.map(inkOf)
  return words.flatMap((one, i) =>
    words.slice(i + 1).flatMap((other, j) => {
      const [a, b] = [inks[i]!, inks[i + 1 + j]!]
      const apart = a.left >= b.right || b.left >= a.right || a.top >= b.bottom || b.top >= a.bottom
      return apart ? [] : [`${one.said} | ${other.said}`]
    }),
  )
}

const word = (said: string, left: number, right: number, base: number): Word => ({
  ...{ said, left, right },
  ...{ top: base, bottom: base + 9 },
})

test('two words overlap where their letters do, and do not beside or below one another', () => {
  expect(overlaps([word('31', 10, 20, 0), word('in', 19, 30, 3)])).toEqual(['31 | in'])
  expect(overlaps([word('31', 10, 20, 0), word('in', 20, 30, 0), word('mm', 10, 20, 7)])).toEqual([])
})

test.skipIf(!isInstalled('pdftotext')).each(packetRuns)(
  'no text lies over another, no page of a drawing has two numbers and no label is cut: %s',
  async (run) => {
    const files = await packetOfRun(run)
    let drawn = 0
    for (const { name, bytes } of files.filter(({ name }) => name.endsWith('.pdf'))) {
      for (const [i, words] of wordsOf(fileOf(bytes, `${run}-${name}`)).entries()) {
        expect(overlaps(words), `${name}, page ${i + 1}`).toEqual([])
        const text = words.map(({ said }) => said).join(' ')
        if (!text.includes('when printed at 100 %')) continue
        drawn += 1
        expect(text.match(/page \d+ of \d+/g), `${name}, page ${i + 1}`).toHaveLength(1)
        expect(text, `${name}, page ${i + 1}`).not.toContain('…')
      }
    }
    expect(drawn).toBeGreaterThan(4)
  },
)
