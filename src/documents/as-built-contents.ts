import type { LayoutPanel, LayoutPost } from '../core/layout/layout.ts'
import { panelKind } from '../core/quantities/count-panels.ts'
import type { Requirement } from '../core/requirements/requirement.ts'
import { currentReadings } from '../core/verdicts/judge-requirements.ts'
import { measuredValue } from '../core/verdicts/saying.ts'
import type { Verdict, VerdictWord } from '../core/verdicts/verdict.ts'
import type { Print } from '../words/print.ts'
import { alongText } from './places-text.ts'
import { postKind } from './post-kind.ts'
import { readingLine } from './reading-lines.ts'
import type { RecordInput } from './record-input.ts'
import { requirementLines } from './requirement-lines.ts'
import { type Fact, runFacts } from './run-facts.ts'
import { type TitleBlockContents, titleBlockContents } from './title-block.ts'
import { documentWords } from './words/document-words.ts'

/** What stands, piece by piece, with what was read of it, and where that differs from the layout; for any writer. */
export interface AsBuiltContents {
  readonly title: string
  readonly run: string
  readonly titleBlock: TitleBlockContents | null
  readonly facts: readonly Fact[]
  /** In words. */
  readonly acceptance: string
  /** Requirements that nobody read; what they ask for is shown as laid out. */
  readonly unread: number
  readonly differences: readonly Difference[]
  readonly posts: readonly BuiltPost[]
  readonly panels: readonly BuiltPanel[]
}

/** One thing read that is not exactly as the layout has it, whether it lies within its limits or not. */
export interface Difference {
  readonly place: string
  readonly must: string
  readonly laid: string
  readonly read: string
  /** Reading less layout, with its sign; null where nothing was measured. */
  readonly apart: string | null
  readonly verdict: VerdictWord
}

/** Readings as they were written; null where there is none. */
export interface BuiltPost {
  readonly number: number
  readonly along: string
  readonly kind: string
  readonly block: boolean
  readonly state: LayoutPost['state']
  readonly height: string | null
  /** From the line of the run. */
  readonly offset: string | null
  /** To the next post. */
  readonly space: string | null
}

export interface BuiltPanel {
  readonly number: number
  readonly length: string
  readonly name: string
  readonly nested: boolean
  readonly role: LayoutPanel['role']
  readonly readLength: string | null
  /** How it laps with the next panel; null at the last. */
  readonly readLap: string | null
}

export function asBuiltContents(input: RecordInput): AsBuiltContents {
  const { run, model, requirements, judgement, print } = input
  const { posts, spaces, panels, splices } = model.layout
  const read = readTexts(input)
  const byId = new Map(requirements.map((requirement) => [requirement.id, requirement]))
  return {
    title: documentWords(print).asBuilt.title,
    run: print.theirs(run.name),
    titleBlock: titleBlockContents(run, print),
    facts: runFacts(input),
    acceptance: print.say(judgement.acceptance),
    unread: judgement.verdicts.filter(({ verdict }) => verdict === 'unread').length,
    differences: judgement.verdicts.flatMap(
      (verdict) => differenceOf(byId.get(verdict.requirement)!, verdict, print) ?? [],
    ),
    posts: posts.map((post, i) => ({
      number: post.number,
      along: alongText(run, post.alongInches),
      kind: postKind(post, model, print),
      block: post.block,
      state: post.state,
      height: read(`${post.id}/rail-height`),
      offset: read(`${post.id}/flare-offset`) ?? read(`${post.id}/lateral-offset`),
      space: spaces[i] === undefined ? null : read(`${spaces[i].id}/spacing`),
    })),
    panels: panels.map((panel, i) => {
      const { name, layers } = panelKind(panel, model)
      return {
        number: panel.number,
        length: alongText(run, panel.inches),
        name: print.say({ kind: 'panel as named', of: name }),
        nested: layers === 2,
        role: panel.role,
        readLength: read(`${panel.id}/panel-length`),
        readLap: splices[i] === undefined ? null : read(`${splices[i].id}/lap`),
      }
    }),
  }
}

/** What was read for a requirement, or for something that others are computed from, in words. */
function readTexts(input: RecordInput): (of: string) => string | null {
  const lines = new Map(requirementLines(input).map((line) => [line.id, line]))
  const current = currentReadings(input.readings)
  return (of) => {
    const line = lines.get(of)
    if (line?.derived != null) return line.derived.value
    if (line !== undefined && line.readings.length > 0) return line.readings.at(-1)!.answer
    const reading = current.get(of)
    return reading === undefined ? null : readingLine(reading, undefined, input).answer
  }
}

function differenceOf(requirement: Requirement, { place, verdict, because }: Verdict, print: Print): Difference | null {
  const { must, look } = requirement
  const words = documentWords(print).asBuilt
  const difference = (laid: string, read: string, apart: string | null): Difference => ({
    place: print.say(place),
    must: print.say(must),
    laid,
    read,
    apart,
    verdict,
  })
  if (because.kind === 'measured' && look.kind === 'measure') {
    const { nominal, unit } = look.limits
    if (nominal === 'notStated' || Math.abs(because.value - nominal) < numericTolerance) return null
    const apart = because.value - nominal
    const size = print.measured(Math.abs(apart), because.unit)
    return difference(
      print.say(measuredValue({ value: nominal, unit, ...(because.side === undefined ? {} : { side: 'stated' }) })),
      print.say(measuredValue(because)),
      because.side === 'not stated' ? null : `${apart < 0 ? '−' : '+'}${size}`,
    )
  }
  if (because.kind === 'chosen' && look.kind === 'choose' && !because.right)
    return difference(print.say(look.choices.find(({ right }) => right)!.label), print.say(because.label), null)
  return because.kind === 'confirmed' && !because.yes ? difference(words.so, words.notSo, null) : null
}

/** Less than any step that is read, in the limit's own unit. */
const numericTolerance = 1e-6
