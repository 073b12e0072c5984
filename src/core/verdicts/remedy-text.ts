import { feetInchesText, lengthText, quantityText } from '../hardware/dimension-text.ts'
import { slotSentence } from '../requirements/measured-rules.ts'
import type { Unit } from '../units/quantity-kinds.ts'
import { measuredText, sideText } from './describe-reason.ts'
import type {
  ExchangePanel,
  MeasureFirst,
  MovePosts,
  NotProvable,
  RaisePost,
  RemedyStep,
  ResetPost,
  Span,
} from './remedy.ts'

/** The steps of a remedy in plain words, in their order. */
export function remedyText(steps: readonly RemedyStep[]): string {
  const exchanges = steps.filter((step) => step.kind === 'exchange panel')
  const others = steps.filter((step) => step.kind !== 'exchange panel').map(stepText)
  if (exchanges.length > 0)
    others.unshift(`${exchanges.map(exchangeText).join('; ')}. Every splice then lies where it belongs.`)
  return others.join(' ')
}

function stepText(step: Exclude<RemedyStep, ExchangePanel>): string {
  switch (step.kind) {
    case 'measure first':
      return measureText(step)
    case 'move posts':
      return moveText(step)
    case 'raise post':
      return raiseText(step)
    case 'reset post':
      return resetText(step)
    case 'move end': {
      const { post, by, unit, standsAt, holds } = step
      const way = sideText(by < 0 ? 'toward' : 'away')
      return `Move post ${post} by ${measuredText(Math.abs(by), unit)} ${way}, the other posts of the flare in proportion; it then stands ${measuredText(standsAt, unit)} off the line of the run, away from traffic.${proofText(holds, unit)}`
    }
    case 'set right':
      return step.to.kind === 'value' ? `${step.how}${proofText(step.to.span, step.to.unit)}` : step.how
    case 'as the rule says':
      return step.how
    case 'lay out again':
      return 'No move of these posts alone brings the spaces right: lay the run out again from the last post that is right.'
    case 'not provable':
      return notProvableText(step)
    default:
      return step satisfies never
  }
}

function measureText({ what, requirements, from, to, using }: MeasureFirst): string {
  const count = requirements.length
  switch (what) {
    case 'stub':
      return 'Measure the stub first: raising the post raises it too.'
    case 'rail':
      return 'Measure the rail height first: lowering the post lowers it too.'
    case 'spaces':
      return `${count} of the spaces beside and beyond ${count === 1 ? 'is' : 'are'} unread: measure first whether every post beyond is out by the same amount.`
    case 'panels':
      return from === to
        ? `Measure panel ${to} splice to splice: it is not of the length that the layout gives, and moves every splice beyond it.`
        : `Measure panels ${from} to ${to} splice to splice: one of them is not of the length that the layout gives, and moves every splice beyond it.`
    case 'side':
      return `Read again on which side of the line of the run post ${to} stands: the way in which to move it depends on it.`
    case 'splice again':
      return `Read splice ${to} again, and the panels and spaces beside it: as those are read it lies where it belongs.`
    case 'finely':
      return `Read it again with ${using} first: a reading like this one is too coarse to say how far post ${to} has to be moved.`
    default:
      return what satisfies never
  }
}

function moveText({ from, to, by, unit, reaches, with: others, newSlotAt }: MovePosts): string {
  const slots = slotSentence(newSlotAt === null ? [] : [{ number: newSlotAt, state: 'moved' }])
  const far = measuredText(Math.abs(by), unit)
  const way = by > 0 ? 'downstream' : 'upstream'
  const also =
    others.length === 0
      ? ''
      : ` once post ${others.join(' and post ')} ${others.length > 1 ? 'are' : 'is'} moved as well`
  if (reaches === null) {
    const posts = from === to ? `post ${from}` : `posts ${from} to ${to}`
    return `Move ${posts} ${way} by ${far}; both spaces then come right${also}. ${slots}`
  }
  const isFirst = reaches === 'first end'
  const alone = `post ${isFirst ? to : from}`
  const posts = from === to ? alone : `${alone} and every post ${isFirst ? 'before it' : 'beyond'}`
  if (others.length > 0) return `Move ${posts} ${way} by ${far}; the space then comes right${also}. ${slots}`
  const closer = by > 0 === isFirst ? 'closer to' : 'away from'
  const neighbour = `post ${isFirst ? to + 1 : from - 1}`
  const move =
    from === to ? `Move ${posts} by ${far}, ${closer} ${neighbour}` : `Move ${posts} ${far} ${closer} ${neighbour}`
  return `${move}. ${slots}`
}

function raiseText({ post, by, unit, railThen, stubThen, holds, blockUpTo }: RaisePost): string {
  const way = by >= 0 ? 'Raise' : 'Lower'
  const then = [
    ...(railThen === null ? [] : [`rail then at ${measuredText(railThen, unit)}`]),
    ...(stubThen === null ? [] : [`stub at ${measuredText(stubThen, unit)}`]),
  ].join(', ')
  const signed = (move: number): string => `${move < 0 ? 'down' : 'up'} ${lengthText(Math.abs(move), unit)}`
  const range = holds === null ? '' : ` (anything from ${signed(holds.from)} to ${signed(holds.to)} holds)`
  const ground = railThen === null || by > 0 ? '' : ' Check first that finish grade is right.'
  const block =
    blockUpTo === null
      ? ''
      : ` Or raise the block on the post by as much (up to ${blockUpTo} in is customary; drill or punch the new hole, no torch).`
  return `${way} post ${post} by ${measuredText(Math.abs(by), unit)}: ${then}${range}.${ground}${block}`
}

function resetText({ post, because }: ResetPost): string {
  const end = 'Reset the post, or bring finish grade to where both hold.'
  if (because === null)
    return `No move of post ${post} brings rail and stub so far inside their limits that an instrument of this run would prove it. ${end}`
  const { unit, brings, move, railThen, stubThen, stubLimit } = because
  const text = (length: number): string => lengthText(length, unit)
  const what =
    brings === 'stub'
      ? `Lowering post ${post} until the stub is at ${text(stubThen)} would put the rail at ${text(railThen)}`
      : `${move >= 0 ? 'Raising' : 'Lowering'} post ${post} until the rail is at ${text(railThen)} would put the stub at ${text(stubThen)}, over ${text(stubLimit)}`
  return `${what}: no move of the post brings rail and stub right together. ${end}`
}

function exchangeText({ panel, from, to, name }: ExchangePanel): string {
  const hangs = from === null ? '' : ` (${feetInchesText(from)})`
  const wanted = name === null ? `a ${feetInchesText(to)} panel` : `the ${name}, ${feetInchesText(to)} long`
  return `exchange panel ${panel}${hangs} for ${wanted}`
}

/** What the next reading has to say, where the limits alone do not tell. */
function proofText({ from, to }: Span, unit: Unit): string {
  if (from === null && to === null) return ''
  const text = (value: number): string => quantityText(value, unit)
  const range =
    from === to
      ? text(from!)
      : from === null
        ? `at most ${text(to!)}`
        : to === null
          ? `at least ${text(from)}`
          : `${text(from)} to ${text(to)}`
  return ` A reading of ${range} then proves it.`
}

function notProvableText({ would }: NotProvable): string {
  const how =
    would.length === 0
      ? 'no instrument of this run would prove it'
      : `a reading taken directly with ${would[0]} would prove it`
  return `The limits leave no room for the doubt of such a reading, so it cannot be proven that way: ${how}.`
}
