import type { Unit } from '../../core/units/quantity-kinds.ts'
import type {
  ExchangePanel,
  MeasureFirst,
  MoveEnd,
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
      others.unshift(`${upperFirst(exchanges.map(print.say).join('; '))}. Así cada empalme queda en su sitio.`)
    return others.join(' ')
  },
  'exchange panel': ({ panel, from, to, name }: ExchangePanel, print) => {
    const hangs = from === null ? '' : ` (${print.feetInches(from)})`
    const length = print.feetInches(to)
    const wanted = name === null ? `uno de ${length}` : `el ${print.say(name)}, de ${length}`
    return `cambie el panel ${panel}${hangs} por ${wanted}`
  },
  'measure first': measureText,
  'move posts': moveText,
  'raise post': raiseText,
  'reset post': resetText,
  'move end': moveEndText,
  'set right': ({ how, to }, print) =>
    to.kind === 'value' ? `${print.say(how)}${proofText(to.span, to.unit, print)}` : print.say(how),
  'as the rule says': ({ how }, print) => print.say(how),
  'lay out again': () =>
    'Ningún movimiento de estos postes por sí solos deja bien los espacios: trace de nuevo el tramo desde el último poste que esté bien.',
  'not provable': ({ would }, print) => {
    const how =
      would[0] === undefined
        ? 'ningún instrumento de este tramo lo demostraría'
        : `lo demostraría una lectura tomada directamente con ${print.say(would[0])}`
    return `Los límites no dejan lugar para la duda de una lectura así y por ese camino no se puede demostrar: ${how}.`
  },
}

function measureText(step: MeasureFirst, print: Print): string {
  const { requirements, from, to } = step
  const count = requirements.length
  switch (step.what) {
    case 'stub':
      return 'Mida primero el muñón: al subir el poste también sube.'
    case 'rail':
      return 'Mida primero la altura de la baranda: al bajar el poste también baja.'
    case 'spaces':
      return `${count} de los espacios al lado y más allá ${count === 1 ? 'está' : 'están'} sin leer: mida primero si cada poste más allá está desplazado lo mismo.`
    case 'panels':
      return from === to
        ? `Mida de empalme a empalme el panel ${to}: no tiene la longitud que da la disposición, y desplaza todos los empalmes que siguen.`
        : `Mida de empalme a empalme los paneles ${from} a ${to}: uno de ellos no tiene la longitud que da la disposición, y desplaza todos los empalmes que siguen.`
    case 'side':
      return `Lea de nuevo de qué lado de la línea del tramo está el poste ${to}: de ello depende hacia dónde moverlo.`
    case 'splice again':
      return `Lea otra vez el empalme ${to}, y los paneles y espacios a su lado: según esas lecturas está en su sitio.`
    case 'finely':
      return `Léalo primero otra vez con ${print.say(step.using)}: una lectura como esta es demasiado basta para decir cuánto hay que mover el poste ${to}.`
    default:
      return step satisfies never
  }
}

function moveText({ from, to, by, unit, reaches, with: others, newSlotAt }: MovePosts, print: Print): string {
  const slots = print.say({ kind: 'rail slots', newSlotAt })
  const far = print.measured(Math.abs(by), unit)
  const way = by > 0 ? 'aguas abajo' : 'aguas arriba'
  const also =
    others.length === 0
      ? ''
      : ` en cuanto se ${others.length > 1 ? 'muevan' : 'mueva'} también el poste ${others.join(' y el poste ')}`
  if (reaches === null) {
    const posts = from === to ? `el poste ${from}` : `los postes ${from} a ${to}`
    return `Mueva ${posts} ${far} ${way}; los dos espacios quedan así bien${also}. ${slots}`
  }
  const isFirst = reaches === 'first end'
  const post = isFirst ? to : from
  const isAlone = from === to
  const beyond = isAlone ? '' : `, y cada poste ${isFirst ? 'antes de él' : 'más allá'},`
  if (others.length > 0)
    return `Mueva el poste ${post}${beyond} ${far} ${way}; el espacio queda así bien${also}. ${slots}`
  const isCloser = by > 0 === isFirst
  const neighbour = isFirst ? to + 1 : from - 1
  if (isAlone)
    return `Mueva el poste ${post} ${far}, ${isCloser ? 'hacia el' : 'alejándolo del'} poste ${neighbour}. ${slots}`
  return isCloser
    ? `Acerque el poste ${post}${beyond} ${far} al poste ${neighbour}. ${slots}`
    : `Aleje el poste ${post}${beyond} ${far} del poste ${neighbour}. ${slots}`
}

function raiseText({ post, by, unit, railThen, stubThen, holds, blockUpTo }: RaisePost, print: Print): string {
  const way = by >= 0 ? 'Suba' : 'Baje'
  const [rail, stub] = [railThen, stubThen].map((height) => (height === null ? null : print.measured(height, unit)))
  const then = [
    ...(rail === null ? [] : [`la baranda queda a ${rail}`]),
    ...(stub === null ? [] : [rail === null ? `el muñón queda a ${stub}` : `el muñón a ${stub}`]),
  ].join(', ')
  const signed = (move: number): string => `${move < 0 ? 'bajar' : 'subir'} ${print.length(Math.abs(move), unit)}`
  const range = holds === null ? '' : ` (sirve todo entre ${signed(holds.from)} y ${signed(holds.to)})`
  const ground = railThen === null || by > 0 ? '' : ' Compruebe primero que la rasante terminada esté bien.'
  const block =
    blockUpTo === null
      ? ''
      : ` O suba el bloque en el poste lo mismo (hasta ${print.length(blockUpTo, 'in')} es costumbre; taladre o punzone el agujero nuevo, sin soplete).`
  return `${way} el poste ${post} ${print.measured(Math.abs(by), unit)}: ${then}${range}.${ground}${block}`
}

function resetText({ post, because }: ResetPost, print: Print): string {
  const end = 'Vuelva a colocar el poste, o lleve la rasante terminada a donde los dos queden bien.'
  if (because === null)
    return `Ningún movimiento del poste ${post} lleva la baranda y el muñón tan adentro de sus límites que un instrumento de este tramo lo demuestre. ${end}`
  const { unit, brings, move, railThen, stubThen, stubLimit } = because
  const text = (length: number): string => print.length(length, unit)
  const moving = move >= 0 ? 'Subir' : 'Bajar'
  const what =
    brings === 'stub'
      ? `${moving} el poste ${post} hasta que el muñón esté a ${text(stubThen)} dejaría la baranda a ${text(railThen)}`
      : `${moving} el poste ${post} hasta que la baranda esté a ${text(railThen)} dejaría el muñón a ${text(stubThen)}, ${stubThen > stubLimit ? 'más' : 'menos'} de ${text(stubLimit)}`
  return `${what}: ningún movimiento del poste deja bien a la vez la baranda y el muñón. ${end}`
}

function moveEndText({ post, by, unit, standsAt, holds }: MoveEnd, print: Print): string {
  const far = print.measured(Math.abs(by), unit)
  const move = by < 0 ? `Acerque el poste ${post} ${far} al tránsito` : `Aleje el poste ${post} ${far} del tránsito`
  return `${move}, y los demás postes del abocinado en proporción; queda entonces a ${print.measured(standsAt, unit)} de la línea del tramo, del lado opuesto al tránsito.${proofText(holds, unit, print)}`
}

/** What the next reading has to say, where the limits alone do not tell. */
function proofText({ from, to }: Span, unit: Unit, print: Print): string {
  if (from === null && to === null) return ''
  const text = (value: number): string => print.quantity(value, unit)
  const range =
    from === to
      ? text(from!)
      : from === null
        ? `${text(to!)} como máximo`
        : to === null
          ? `${text(from)} como mínimo`
          : `${text(from)} a ${text(to)}`
  return ` Una lectura de ${range} lo demuestra entonces.`
}
