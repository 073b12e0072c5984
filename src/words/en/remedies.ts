import type { Unit } from '../../core/units/quantity-kinds.ts'
import type {
  ExchangePanel,
  MeasureFirst,
  MovePosts,
  RaisePost,
  RemedyStep,
  ResetPost,
  Span,
} from '../../core/verdicts/remedy.ts'
import type { Remedy } from '../../core/verdicts/saying.ts'
import type { Print, Printers } from '../print.ts'
import { upperFirst } from '../upper-first.ts'

/** What to do about what is found, step by step. */
export const remedies: Printers<Remedy | RemedyStep> = {
  remedy: ({ steps }, print) => {
    const exchanges = steps.filter((step) => step.kind === 'exchange panel')
    const others = steps.filter((step) => step.kind !== 'exchange panel').map(print.say)
    if (exchanges.length > 0)
      others.unshift(`${upperFirst(exchanges.map(print.say).join('; '))}. Every splice then lies where it belongs.`)
    return others.join(' ')
  },
  'exchange panel': ({ panel, from, to, name }: ExchangePanel, print) => {
    const hangs = from === null ? '' : ` (${print.feetInches(from)})`
    const length = print.feetInches(to)
    const wanted = name === null ? `a ${length} panel` : `the ${print.say(name)}, ${length} long`
    return `exchange panel ${panel}${hangs} for ${wanted}`
  },
  'measure first': measureText,
  'move posts': moveText,
  'raise post': raiseText,
  'reset post': resetText,
  'move end': ({ post, by, unit, standsAt, holds }, print) => {
    const way = print.say({ kind: 'side', side: by < 0 ? 'toward' : 'away' })
    const far = print.measured(Math.abs(by), unit)
    return `Move post ${post} by ${far} ${way}, the other posts of the flare in proportion; it then stands ${print.measured(standsAt, unit)} off the line of the run, away from traffic.${proofText(holds, unit, print)}`
  },
  'set right': ({ how, to }, print) =>
    to.kind === 'value' ? `${print.say(how)}${proofText(to.span, to.unit, print)}` : print.say(how),
  'as the rule says': ({ how }, print) => print.say(how),
  'lay out again': () =>
    'No move of these posts alone brings the spaces right: lay the run out again from the last post that is right.',
  'not provable': ({ would }, print) => {
    const how =
      would[0] === undefined
        ? 'no instrument of this run would prove it'
        : `a reading taken directly with ${print.say(would[0])} would prove it`
    return `The limits leave no room for the doubt of such a reading, so it cannot be proven that way: ${how}.`
  },
}

function measureText(step: MeasureFirst, print: Print): string {
  const { requirements, from, to } = step
  const count = requirements.length
  switch (step.what) {
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
      return `Read it again with ${print.say(step.using)} first: a reading like this one is too coarse to say how far post ${to} has to be moved.`
    default:
      return step satisfies never
  }
}

function moveText({ from, to, by, unit, reaches, with: others, newSlotAt }: MovePosts, print: Print): string {
  const slots = print.say({ kind: 'rail slots', newSlotAt })
  const far = print.measured(Math.abs(by), unit)
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

function raiseText({ post, by, unit, railThen, stubThen, holds, blockUpTo }: RaisePost, print: Print): string {
  const way = by >= 0 ? 'Raise' : 'Lower'
  const then = [
    ...(railThen === null ? [] : [`rail then at ${print.measured(railThen, unit)}`]),
    ...(stubThen === null ? [] : [`stub at ${print.measured(stubThen, unit)}`]),
  ].join(', ')
  const signed = (move: number): string => `${move < 0 ? 'down' : 'up'} ${print.length(Math.abs(move), unit)}`
  const range = holds === null ? '' : ` (anything from ${signed(holds.from)} to ${signed(holds.to)} holds)`
  const ground = railThen === null || by > 0 ? '' : ' Check first that finish grade is right.'
  const block =
    blockUpTo === null
      ? ''
      : ` Or raise the block on the post by as much (up to ${print.length(blockUpTo, 'in')} is customary; drill or punch the new hole, no torch).`
  return `${way} post ${post} by ${print.measured(Math.abs(by), unit)}: ${then}${range}.${ground}${block}`
}

function resetText({ post, because }: ResetPost, print: Print): string {
  const end = 'Reset the post, or bring finish grade to where both hold.'
  if (because === null)
    return `No move of post ${post} brings rail and stub so far inside their limits that an instrument of this run would prove it. ${end}`
  const { unit, brings, move, railThen, stubThen, stubLimit } = because
  const text = (length: number): string => print.length(length, unit)
  const moving = move >= 0 ? 'Raising' : 'Lowering'
  const what =
    brings === 'stub'
      ? `${moving} post ${post} until the stub is at ${text(stubThen)} would put the rail at ${text(railThen)}`
      : `${moving} post ${post} until the rail is at ${text(railThen)} would put the stub at ${text(stubThen)}, ${stubThen > stubLimit ? 'over' : 'under'} ${text(stubLimit)}`
  return `${what}: no move of the post brings rail and stub right together. ${end}`
}

/** What the next reading has to say, where the limits alone do not tell. */
function proofText({ from, to }: Span, unit: Unit, print: Print): string {
  if (from === null && to === null) return ''
  const text = (value: number): string => print.quantity(value, unit)
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
