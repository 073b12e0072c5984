import { inBothUnits, inOneUnit } from '../words/in-both-units.ts'
import type { Print } from '../words/print.ts'
import type { Said } from '../words/said.ts'
import type { Drawing, Item, Text } from './drawing.ts'
import { boxRound, fitParagraphs, isIn, type Paragraph, sizeOf } from './fit-paragraphs.ts'

type Say = (sentence: string) => Said

/**
 * The drawing with the prose in it said by `print`: texts, dimensions, names of groups, title and description. A length
 * that is given in the other system has its own beside it in a sentence, and gives way to it where it stands alone, as
 * at a dimension line.
 *
 * Lines into which one sentence is broken are said as one and broken anew. A text that grows is made smaller where it
 * would otherwise touch another or leave its frame. Nothing but texts changes.
 */
export function sayDrawing(drawing: Drawing, print: Print): Drawing {
  if (print.language === 'en' && print.units !== 'metric') return drawing
  const say = sayBy(print)
  const paragraphs: Paragraph[] = []
  const items = sayItems(drawing.items, '', drawing, say, paragraphs)
  const fitted = fitParagraphs(paragraphs, drawing)
  return {
    ...drawing,
    title: say(drawing.title).text,
    description: say(drawing.description).text,
    items: withFitted(items, fitted),
  }
}

const sayBy =
  ({ prose, units }: Print): Say =>
  (sentence) => {
    const { text, left } = prose(sentence)
    if (units === null) return { text, left }
    const isAlone = !/\p{L}/u.test(text.replaceAll(/\b(?:in|ft|mm|m)\b/g, ''))
    return { text: isAlone ? inOneUnit(text, units) : inBothUnits(text, units), left }
  }

/** Texts as they were, the first of a paragraph standing for all of it; the rest of the items said. */
function sayItems(items: readonly Item[], title: string, drawing: Drawing, say: Say, found: Paragraph[]): Item[] {
  const said: Item[] = []
  for (let i = 0; i < items.length; i++) {
    const item = items[i]!
    switch (item.kind) {
      case 'text': {
        const column = columnFrom(items, i, drawing)
        for (const lines of sentencesOf(column, say)) {
          found.push({ lines, words: wordsOf(lines, title, say), frame: frameOf(lines[0]!, items, drawing) })
          said.push(...lines)
        }
        i += column.length - 1
        break
      }
      case 'dimension':
        said.push({ ...item, text: say(item.text).text })
        break
      case 'group':
        said.push({
          ...item,
          title: say(item.title).text,
          items: sayItems(item.items, item.title, drawing, say, found),
        })
        break
      default:
        said.push(item)
    }
  }
  return said
}

/** Texts of one kind below one another, as many as follow each other from `start`. */
function columnFrom(items: readonly Item[], start: number, { scale }: Drawing): readonly Text[] {
  const column = [items[start] as Text]
  for (const item of items.slice(start + 1)) {
    const last = column.at(-1)!
    if (item.kind !== 'text' || !isBelow(item, last, scale / 72)) break
    column.push(item)
  }
  return column
}

function isBelow(text: Text, above: Text, perPoint: number): boolean {
  const isAlike =
    text.layer === above.layer &&
    text.anchor === above.anchor &&
    text.level === above.level &&
    text.bold === above.bold &&
    text.turnDegrees === 0 &&
    above.turnDegrees === 0 &&
    sizeOf(text, perPoint) === sizeOf(above, perPoint)
  const lines = (above.at.y - text.at.y) / perPoint / sizeOf(text, perPoint)
  return isAlike && Math.abs(text.at.x - above.at.x) < 1e-6 * perPoint && lines > 0.9 && lines < 1.5
}

/** The lines by the sentences to which they belong: the division that leaves least unsaid, and of those the finest. */
function sentencesOf(column: readonly Text[], say: Say): readonly (readonly Text[])[] {
  const best: { readonly unsaid: number; readonly parts: readonly (readonly Text[])[] }[] = [{ unsaid: 0, parts: [] }]
  for (let end = 1; end <= column.length; end++) {
    for (let start = end - 1; start >= 0; start--) {
      const lines = column.slice(start, end)
      const before = best[start]!
      const unsaid = before.unsaid + say(joined(lines)).left.join('').length
      const parts = [...before.parts, lines]
      const known = best[end]
      if (
        known === undefined ||
        unsaid < known.unsaid ||
        (unsaid === known.unsaid && parts.length > known.parts.length)
      )
        best[end] = { unsaid, parts }
    }
  }
  return best[column.length]!.parts
}

const joined = (lines: readonly Text[]): string => lines.map(({ text }) => text).join(' ')

/** What the lines say; a text that was cut short is said by the name of its group, which it begins. */
function wordsOf(lines: readonly Text[], title: string, say: Say): string {
  const words = joined(lines)
  const isCut = words.endsWith('…') && title.startsWith(words.slice(0, -1))
  return say(isCut ? title : words).text
}

/** What is drawn round the text: an edge holds it on all sides, a blank only above and below; else the drawing's own. */
function frameOf({ at }: Text, items: readonly Item[], { extent }: Drawing): Paragraph['frame'] {
  const round = items.flatMap((item) => {
    if (item.kind !== 'area') return []
    const box = boxRound(item.points)
    return isIn(box, at) ? [item.edged ? box : { ...extent, minY: box.minY, maxY: box.maxY }] : []
  })
  return round.at(-1) ?? extent
}

function withFitted(items: readonly Item[], fitted: ReadonlyMap<Text, readonly Text[]>): Item[] {
  return items.flatMap((item): readonly Item[] => {
    if (item.kind === 'text') return fitted.get(item) ?? []
    return item.kind === 'group' ? [{ ...item, items: withFitted(item.items, fitted) }] : [item]
  })
}
