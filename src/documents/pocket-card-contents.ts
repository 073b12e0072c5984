import type { HardwareSheet } from '../core/hardware/hardware-sheet.ts'
import { limitsOf } from '../core/hardware/limits-saying.ts'
import { rulePicture, type SaidPicture } from '../core/hardware/rule-picture.ts'
import { contentOf, sheetText } from '../core/hardware/sheet-text.ts'
import type { Requirement } from '../core/requirements/requirement.ts'
import type { Drawing } from '../drawing/drawing.ts'
import { figureFacts } from '../drawing/views/figures/figure-facts.ts'
import { figureHalves } from '../drawing/views/figures.ts'
import type { Print } from '../words/print.ts'
import { cautions } from './cautions.ts'
import { groupBy } from './group-by.ts'
import { placesText } from './places-text.ts'
import { editionText } from './sheet-list-contents.ts'
import { documentWords } from './words/document-words.ts'

/** The checks of one sheet in walking order, for the pocket. */
export interface PocketCardContents {
  readonly title: string
  /** The sheet, in the head of each page. */
  readonly run: string
  /** Top of the rail by the sheet, and its test criteria. */
  readonly facts: readonly string[]
  readonly notice: string
  /** First what later work covers. */
  readonly parts: readonly { readonly heading: string; readonly checks: readonly CardCheck[] }[]
  readonly cautions: readonly string[]
}

export interface CardCheck {
  /** Counts through the card. */
  readonly number: number
  readonly places: string
  /** What must be true; of several the one that the layout gives. */
  readonly musts: readonly string[]
  readonly how: string
  readonly isFromMemory: boolean
  readonly pictures: readonly CardPicture[]
  /** A picture of the sheet's own; null where the rule has none. */
  readonly own: SaidPicture | null
}

/** The right one and its wrong twin. */
export interface CardPicture {
  readonly right: string
  readonly wrong: string
  readonly drawings: { readonly right: Drawing; readonly wrong: Drawing }
}

/**
 * @param isChanged     whether the sheet was changed since the edition that it names, and is not saved
 * @param requirements  all that the sheet requires, at every place where it does, in walking order
 */
export function pocketCardContents(
  sheet: HardwareSheet,
  isChanged: boolean,
  requirements: readonly Requirement[],
  print: Print,
): PocketCardContents {
  const words = documentWords(print).pocketCard
  // What a run file decides nobody can look at.
  const seen = requirements.filter(({ look }) => look.kind !== 'record')
  const groups = alternatives(seen)
  const checks = groups.map((group, i) => cardCheck(sheet, group, i + 1, print))
  const isHeld = (i: number): boolean => groups[i]!.some(({ hold }) => hold)
  return {
    title: words.title,
    run: editionText(sheet, isChanged, print),
    facts: [
      words.rail(print.say(limitsOf(sheet.railHeight))),
      ...(sheet.criteria.length === 0 ? [] : [print.say({ kind: 'crash tests', tests: sheet.criteria })]),
    ],
    notice: print.say(sheetText(sheet, sheet.notice)),
    parts: [
      { heading: words.covered, checks: checks.filter((_, i) => isHeld(i)) },
      { heading: words.inOrder, checks: checks.filter((_, i) => !isHeld(i)) },
    ].filter(({ checks }) => checks.length > 0),
    cautions: cautions(print),
  }
}

/**
 * The requirements of one check together: the same at several places, and those of one topic of which the layout gives
 * one or the other to a place, as panels of two lengths.
 */
function alternatives(requirements: readonly Requirement[]): readonly (readonly Requirement[])[] {
  const found: { readonly places: Set<string>; readonly topic: string; readonly all: Requirement[] }[] = []
  for (const same of groupBy(requirements, ({ topic, must, look }) =>
    contentOf({ topic, must, look: deciding(look) }),
  )) {
    const [{ topic }] = same
    const places = same.map(({ place }) => place.id)
    const other = found.find((one) => one.topic === topic && places.some((place) => one.places.has(place)))
    if (other === undefined) found.push({ topic, places: new Set(places), all: [...same] })
    else {
      other.all.push(...same)
      for (const place of places) other.places.add(place)
    }
  }
  return found.map(({ all }) => all)
}

/** What decides, without what the readings of a place would be called. */
const deciding = (look: Requirement['look']): unknown =>
  look.kind === 'measure' ? look.limits : look.kind === 'choose' ? look.choices : look.kind

function cardCheck(sheet: HardwareSheet, all: readonly Requirement[], number: number, print: Print): CardCheck {
  const different = groupBy(all, ({ must }) => contentOf(must)).map(([one]) => one)
  const drawn = groupBy(different, ({ figure }) => figure ?? '').map(([one]) => one)
  return {
    number,
    places: placesOf(sheet, all, print),
    musts: different.map(({ must }) => print.say(must)),
    how: print.say(different[0]!.how),
    isFromMemory: all.some(({ confirmation }) => confirmation === 'from memory'),
    own: rulePicture(sheet, different[0]!.topic),
    pictures: drawn.flatMap((one) => pictureOf(sheet, one, print) ?? []),
  }
}

/** The numbers of a system's places are those of no run: what kind they are is all there is to say. */
function placesOf(sheet: HardwareSheet, all: readonly Requirement[], print: Print): string {
  const places = all.map(({ place }) => place)
  if (sheet.kind !== 'longitudinal') return placesText(places, print)
  const { everywhere } = documentWords(print).pocketCard
  return [...new Set(places.map(({ kind }) => everywhere[kind]))].join('; ')
}

/** Null where no figure tells which is right. */
function pictureOf(sheet: HardwareSheet, requirement: Requirement, print: Print): CardPicture | null {
  if (requirement.figure === null) return null
  const facts = figureFacts(requirement, sheet, print)
  const drawings = figureHalves(requirement.figure, facts)
  // Where a sentence is all that is right, it stands above the picture.
  return drawings && { right: facts.right === facts.must ? '' : facts.right, wrong: facts.wrong, drawings }
}
