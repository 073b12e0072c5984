import { describe, expect, it } from 'vitest'
import { crewSheetContents } from './crew-sheet-contents.ts'
import { sampleInput, sampleRun } from './record-fixtures.ts'

const sheetOf = (changes: object = {}) =>
  crewSheetContents(
    sampleInput(() => [], sampleRun(changes)),
    null,
  )

describe('the crew sheet', () => {
  it('goes from post to post: the distances to the next add up to the distance from post 1', () => {
    const input = sampleInput(() => [])
    const { posts } = crewSheetContents(input, null)
    const inchesOf = (text: string): number => {
      const [, feet = '0', inches = '0', over = '0', under = '1'] =
        /^(?:(\d+) ft )?(\d+)(?: (\d+)\/(\d+))? in$/.exec(text) ?? []
      return Number(feet) * 12 + Number(inches) + Number(over) / Number(under)
    }
    let along = 0
    for (const post of posts) {
      expect(inchesOf(post.along)).toBe(along)
      along += post.next === null ? 0 : inchesOf(post.next)
    }
    expect(posts.at(-1)!.next).toBeNull()
    expect(posts).toHaveLength(input.model.layout.posts.length)
  })

  it('says where posts stand closer, and which panels are nested', () => {
    const usual = sheetOf().departures
    const { departures, panels } = sheetOf({
      need: { from: 0, to: '150 ft' },
      reduced: [{ from: '50 ft', to: '75 ft', spacing: 'half', nested: true }],
    })
    expect(departures.some((line) => /stand 3 ft 1 1\/2 in apart instead of 6 ft 3 in/.test(line))).toBe(true)
    expect(departures.some((line) => /^NESTED, two layers of rail: panel/.test(line))).toBe(true)
    expect(panels.some(({ nested }) => nested)).toBe(true)
    expect(usual.some((line) => /NESTED|instead of 6 ft 3 in/.test(line))).toBe(false)
  })

  it('says that no ticket was entered, and marks what nobody confirmed', () => {
    const { ticket, holes, heights, holds } = sheetOf()
    expect(ticket).toBe('not entered')
    const unconfirmed = sampleInput(() => []).requirements.filter(({ confirmation }) => confirmation === 'from memory')
    for (const rule of [...holes, ...heights, ...holds])
      expect(rule.confirmed, rule.must).toBe(!unconfirmed.some(({ must }) => must === rule.must))
  })
})
