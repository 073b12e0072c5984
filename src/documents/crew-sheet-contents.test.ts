import { describe, expect, it } from 'vitest'
import { sampleInput } from '../../test/fixtures/record-inputs.ts'
import { english } from '../words/english.ts'
import { crewSheetContents } from './crew-sheet-contents.ts'
import { documentWords } from './words/document-words.ts'

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

  it('says that no ticket was entered, and marks what nobody confirmed', () => {
    const { ticket, holes, heights, holds } = crewSheetContents(
      sampleInput(() => []),
      null,
    )
    expect(ticket).toBeNull()
    expect(documentWords(english(null)).crewSheet.noTicket).toContain('not entered')
    const unconfirmed = sampleInput(() => []).requirements.filter(({ confirmation }) => confirmation === 'from memory')
    for (const rule of [...holes, ...heights, ...holds])
      expect(rule.confirmed, rule.must).toBe(!unconfirmed.some(({ must }) => english(null).say(must) === rule.must))
  })
})
